// What the types refuse; were one of these let through, the line that expects it would not compile.
import type { components } from "./build/schema.js";
import type { Length } from "./build/hey/types.gen.js";

// @ts-expect-error  a unit of mass does not measure a length
export const byTypes: components["schemas"]["Length"] = { value: 39, unit: "lb" };

// @ts-expect-error  nor does it here
export const byClient: Length = { value: 39, unit: "lb" };

// @ts-expect-error  the rails of a segment are one of five words
export const rails: components["schemas"]["Segment"]["rails"] = "inner";
