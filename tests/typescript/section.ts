// The same contract by the client that @hey-api/openapi-ts makes: a section of the catalogue, and the force in it when it is cold.
import { client } from "./build/hey/client.gen.js";
import { calculateForce, getRailSection } from "./build/hey/sdk.gen.js";

client.setConfig({ baseUrl: process.env["RAILRULES_URL"] ?? "http://127.0.0.1:8000" });

const section = await getRailSection({ path: { id: "136RE" } });
console.log(section.data?.title, section.data?.values["area"]?.printed);

const cold = await calculateForce({
  body: { section: "136RE", rail_temperature: { value: 25, unit: "degF" }, neutral_temperature: { value: 95, unit: "degF" } },
});
console.log(`${cold.data?.result.force.value} ${cold.data?.result.force.unit}`);
