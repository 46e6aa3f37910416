// The main job from TypeScript, by the types that openapi-typescript makes of the contract: an invented mile of line is answered,
// and a job that cannot be is told by what is wrong with it.
import createClient from "openapi-fetch";
import type { components, paths } from "./build/schema.js";

type Job = components["schemas"]["TakeoffRequest"];

const job: Job = {
  name: "Invented mile",
  segments: [
    {
      name: "Marl Pit to Cinder Road",
      begin: { value: 12, unit: "mi" },
      end: { value: 13, unit: "mi" },
      rails: "both",
      ties: { spacing: { value: 19.5, unit: "in" } },
      old: { section: "90RA-A" },
      new: { section: "115RE", plates: "new", plate: "8-14" },
      curves: [
        { begin: { value: 12.2, unit: "mi" }, end: { value: 12.4, unit: "mi" }, degree: { value: 2, unit: "deg" }, hand: "left" },
      ],
    },
  ],
  supply: {
    tie_in: "weld",
    fixed_tie_in: "weld",
    string: { stock: [{ length: { value: 80, unit: "ft" }, count: 18 }] },
  },
  temperatures: { hottest_rail: { value: 126, unit: "degF" }, coldest_rail: { value: 4, unit: "degF" } },
};

const client = createClient<paths>({ baseUrl: process.env["RAILRULES_URL"] ?? "http://127.0.0.1:8000" });

const { data, error } = await client.POST("/v1/takeoffs", { body: job, headers: { Accept: "application/json" } });
if (error !== undefined || typeof data === "string") {
  throw new Error(error?.detail ?? "no answer");
}
for (const order of data.result.orders) {
  if (order.direction === "order") {
    console.log(`${order.title}: ${order.order.value} ${order.order.unit}`);
  }
}
for (const { check } of data.result.checks) {
  console.log(`${check.verdict}: ${check.title}`);
}

const wrong = await client.POST("/v1/takeoffs", {
  body: { ...job, temperatures: { ...job.temperatures, hottest_rail: { value: 1260, unit: "degF" } } },
});
for (const fault of wrong.error?.errors ?? []) {
  console.log(`refused ${fault.pointer}: ${fault.detail}`);
}
