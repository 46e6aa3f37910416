// The front page: a job goes to the service, its answer comes back as tables, drawings and files. No library, no build.
"use strict";

const find = (id) => document.getElementById(id);
const page = find("main");
const labels = JSON.parse(page.dataset.labels);
const ANSWER = "application/json";
const DRAWING = "image/svg+xml";
let answered = "";          // the body that the shown answer belongs to
let running = null;         // what can be called off
let sheet = 1;
let chartAddress = "";
let chartBlob = null;

function element(name, text, classes) {
  const made = document.createElement(name);
  if (text !== undefined) made.textContent = text;
  if (classes) made.className = classes;
  return made;
}

const plain = new Intl.NumberFormat("en-US", { maximumFractionDigits: 2 });
const large = new Intl.NumberFormat("en-US", { maximumFractionDigits: 0 });
function quantity(value) {
  if (value === undefined || value === null) return "";
  const label = labels[value.unit] ?? value.unit;
  return (Math.abs(value.value) >= 10000 ? large : plain).format(value.value) + (value.unit === "each" ? "" : "\u00a0" + label);
}

function decimal(text) {
  const [whole, rest] = text.split(".");
  return whole.replace(/\B(?=(\d{3})+$)/g, ",") + (rest === undefined ? "" : "." + rest);
}

// ------------------------------------------------------------------------------------------------ progress

let clock = 0;
function begin(words) {
  const since = performance.now();
  find("bar").hidden = false;
  find("state").textContent = words + "…";
  window.clearInterval(clock);
  clock = window.setInterval(() => {
    find("seconds").textContent = ((performance.now() - since) / 1000).toFixed(0) + " s";
  }, 500);
  find("stop").hidden = false;
}
function end(words) {
  window.clearInterval(clock);
  find("bar").hidden = true;
  find("stop").hidden = true;
  find("seconds").textContent = "";
  find("state").textContent = words;
}

async function ask(accept, address, body) {
  running?.abort();
  running = new AbortController();
  return fetch(address, {
    method: "POST",
    headers: { "Content-Type": "application/json", Accept: accept },
    body,
    signal: running.signal,
  });
}

// ------------------------------------------------------------------------------------------------ what goes wrong

function trouble(title, lines) {
  const box = find("trouble");
  box.replaceChildren(element("h2", title));
  const list = element("ul");
  for (const [place, words] of lines) {
    const item = element("li");
    if (place) item.append(element("code", place), " ");
    item.append(words);
    list.append(item);
  }
  box.append(list);
  box.hidden = false;
  box.focus();
}

async function tellProblem(response) {
  let problem = { title: "The service answered " + response.status, detail: "" };
  try { problem = await response.json(); } catch { /* a proxy's page is no problem of ours */ }
  const lines = (problem.errors ?? []).map((fault) => {
    const limits = [];
    if (fault.minimum !== undefined) limits.push("at least " + fault.minimum);
    if (fault.maximum !== undefined) limits.push("at most " + fault.maximum);
    const unit = fault.unit ? " " + (labels[fault.unit] ?? fault.unit) : "";
    const known = fault.allowed ? "; what would do: " + fault.allowed.slice(0, 12).join(", ") : "";
    const sent = fault.value !== undefined ? " (sent: " + fault.value + ")" : "";
    return [fault.pointer || "/", fault.detail + sent + (limits.length ? "; " + limits.join(", ") + unit : "") + known];
  });
  trouble(problem.title, lines.length ? lines : [["", problem.detail]]);
}

// ------------------------------------------------------------------------------------------------ the answer

function table(caption, heads, rows) {
  const holder = element("div", undefined, "wide");
  holder.tabIndex = 0;
  holder.setAttribute("role", "region");
  holder.setAttribute("aria-label", caption);
  const made = element("table");
  made.append(element("caption", caption));
  const head = element("tr");
  for (const [words, kind] of heads) {
    const cell = element("th", words, kind);
    cell.scope = "col";
    head.append(cell);
  }
  made.append(element("thead"));
  made.tHead.append(head);
  const body = element("tbody");
  for (const row of rows) {
    const line = element("tr");
    row.forEach((value, index) => {
      const cell = value instanceof Node ? value : element("td", value, heads[index][1]);
      cell.dataset.head = heads[index][0];
      line.append(cell);
    });
    body.append(line);
  }
  made.append(body);
  holder.append(made);
  return holder;
}

const SIGNS = { passes: "✓ passes", fails: "✗ FAILS", "not-checked": "○ not checked" };
function checks(result, verdicts, caption) {
  const alike = new Map();   // checks that differ in their part or place alone share a row
  for (const { of, check, needs } of result.checks) {
    if (!verdicts.includes(check.verdict)) continue;
    const [title, ...place] = check.title.split(": ");
    const where = [of, ...place].filter(Boolean).join(", ").replaceAll("-", " ");
    const key = JSON.stringify([title, check.verdict, check.demand, check.capacity, check.would_pass, check.governing, needs]);
    if (!alike.has(key)) alike.set(key, { title, check, needs, places: [] });
    if (where) alike.get(key).places.push(where);
  }
  const rows = [...alike.values()].map(({ title, check, needs, places }) => {
    const used = check.utilisation === undefined ? "" : plain.format(check.utilisation * 100) + " %";
    const verdict = element("td", SIGNS[check.verdict], "verdict " + check.verdict);
    const named = element("td", title);
    if (places.length) named.append(element("div", places.join("; "), "soft small"));
    const lacks = needs.join(" or ") || check.governing.replaceAll("_", " ");
    const advice = check.verdict === "not-checked" ? "needs " + lacks : check.would_pass || "—";
    return [verdict, named, quantity(check.demand), quantity(check.capacity), used, advice];
  });
  const heads = [["verdict"], ["check"], ["demand", "n"], ["capacity", "n"], ["used", "n"], ["would pass with"]];
  const made = table(caption, heads, rows);
  made.classList.add("stacked");
  return made;
}

function orders(result, direction, caption) {
  const rows = result.orders
    .filter((order) => order.direction === direction && order.net.value !== 0)
    .map((order) => [
      order.title, order.product, quantity(order.net),
      order.allowance ? plain.format(order.allowance * 100) + " %" : "",
      quantity(order.order),
      order.packages === undefined ? "" : plain.format(order.packages) + " × " + order.package,
      quantity(direction === "order" ? order.order_mass : order.net_mass),
    ]);
  if (direction !== "order") {
    return table(caption, [["item"], ["amount", "n"], ["mass", "n"]], rows.map((row) => [row[0], row[2], row[6]]));
  }
  const heads = [["item"], ["product"], ["net", "n"], ["allowance", "n"], ["order", "n"], ["packages", "n"], ["mass", "n"]];
  return table(caption, heads, rows);
}

function rail(result) {
  const rows = result.rail.flatMap((plan) => plan.trains.loads.map((load) => [
    plan.of, plain.format(load.train), load.first_string + " to " + load.last_string, quantity(load.mass), plain.format(load.unloadings),
  ]));
  return table("Rail trains", [["rail"], ["train", "n"], ["strings", "n"], ["rail on it", "n"], ["drawn off", "n"]], rows);
}

function show(answer) {
  const result = answer.result;
  const failed = result.checks.filter((item) => item.check.verdict === "fails").length;
  const open = result.checks.filter((item) => item.check.verdict === "not-checked").length;
  find("job-name").textContent = result.name;
  const counted = [[failed, "FAILS", "FAIL"], [open, "lacks an input", "lack an input"], [result.checks.length - failed - open, "passes", "pass"]];
  const told = counted.filter(([count]) => count).map(([count, one, several]) => `${count} ${count === 1 ? one : several}`);
  find("verdict").textContent = `${failed ? "✗" : open ? "○" : "✓"} ${result.checks.length} checks: ${told.join("; ")}.`;
  const passed = element("details");
  passed.append(element("summary", `${result.checks.length - failed - open} checks that pass`));
  passed.append(checks(result, ["passes"], "Checks that pass"));
  const tables = failed + open ? [checks(result, ["fails", "not-checked"], "Checks that fail or lack an input"), passed] : [passed];
  tables.push(orders(result, "order", "To order"), orders(result, "recover", "Comes out"),
    orders(result, "work", "Work and haulage"), rail(result));
  if (result.money) {
    const money = result.money;
    const rows = money.costs.map((cost) => [
      cost.title, decimal(cost.quantity), cost.per.replace("_", " "), decimal(cost.price), (cost.credit ? "−" : "") + decimal(cost.amount),
    ]);
    rows.push(["costs less credits", "", "", "", decimal(money.balance)]);
    tables.push(table("Money, " + money.currency, [["item"], ["quantity", "n"], ["per"], ["price", "n"], ["amount", "n"]], rows));
  }
  const notes = element("details");
  notes.append(element("summary", `${answer.assumptions.length} values you did not send, and where they come from`));
  notes.append(table("Defaults and catalogue values used", [["value"], ["what it is"], ["from"], ["source"]], answer.assumptions.map((one) =>
    [one.value, one.about, one.origin, one.cite.title + ", " + one.cite.where])));
  tables.push(notes);
  const cautions = element("ul");
  for (const caution of answer.cautions) cautions.append(element("li", caution.text));
  find("tables").replaceChildren(...tables, element("h3", "Cautions"), cautions);
  find("answer").hidden = false;
}

async function chart() {
  const drawing = find("drawing").value;
  begin("drawing");
  const response = await ask(DRAWING, `/v1/takeoffs?drawing=${drawing}&sheet=${sheet}`, answered);
  if (!response.ok) { end(""); await tellProblem(response); return; }
  const blob = await response.blob();
  const root = new DOMParser().parseFromString(await blob.text(), DRAWING).documentElement;
  const sheets = drawing === "tie-panel" ? Number(find("drawing").dataset.segments) : Number(root.dataset.sheets ?? root.getAttribute("data-sheets"));
  if (chartAddress) URL.revokeObjectURL(chartAddress);
  chartBlob = blob;
  chartAddress = URL.createObjectURL(blob);
  find("picture").src = chartAddress;
  find("picture").alt = root.querySelector("desc")?.textContent ?? "drawing of the job";
  find("sheet-of").textContent = `sheet ${sheet} of ${sheets}`;
  find("before").disabled = sheet <= 1;
  find("after").disabled = sheet >= sheets;
  end("Answered.");
}

function save(blob, name) {
  const link = element("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  window.setTimeout(() => URL.revokeObjectURL(link.href), 60000);
}

// ------------------------------------------------------------------------------------------------ what the reader does

async function guarded(work) {
  find("trouble").hidden = true;
  try {
    await work();
  } catch (error) {
    end("");
    if (error.name !== "AbortError") trouble("The service could not be reached", [["", String(error.message)]]);
  }
}

async function answerJob() {
  let body;
  try {
    body = JSON.parse(find("job").value);
  } catch (error) {
    trouble("This is not JSON yet", [["", String(error.message)], ["railrules job FILE", "prints a job kept as TOML, CSV or workbook as JSON"]]);
    return;
  }
  const units = find("units").value;
  if (units && body && typeof body === "object") body.units = units;
  const text = JSON.stringify(body);
  begin("counting");
  find("go").disabled = true;
  try {
    const response = await ask(ANSWER, "/v1/takeoffs", text);
    if (!response.ok) { end(""); find("answer").hidden = true; await tellProblem(response); return; }
    answered = text;
    sheet = 1;
    find("drawing").dataset.segments = String(body.segments.length);
    show(await response.json());
    await chart();
    find("answer").focus();
  } finally {
    find("go").disabled = false;
  }
}

async function take(file) {
  find("job").value = await file.text();
  end(file.name + " is read; answer it when ready.");
}

find("form").addEventListener("submit", (event) => { event.preventDefault(); guarded(answerJob); });
find("job").addEventListener("keydown", (event) => {
  if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) { event.preventDefault(); find("form").requestSubmit(); }
});
find("stop").addEventListener("click", () => { running?.abort(); end("Called off."); });
find("choose").addEventListener("click", () => find("file").click());
find("file").addEventListener("change", (event) => { if (event.target.files[0]) guarded(() => take(event.target.files[0])); });
find("demo").addEventListener("click", () => guarded(async () => {
  find("job").value = await (await fetch("/static/demo-job.json")).text();
  end("The demo job is in; change what you like, then answer it.");
}));
const drop = find("drop");
for (const name of ["dragenter", "dragover"]) drop.addEventListener(name, (event) => { event.preventDefault(); drop.classList.add("over"); });
for (const name of ["dragleave", "drop"]) drop.addEventListener(name, () => drop.classList.remove("over"));
drop.addEventListener("drop", (event) => {
  event.preventDefault();
  if (event.dataTransfer.files[0]) guarded(() => take(event.dataTransfer.files[0]));
});
find("before").addEventListener("click", () => { sheet -= 1; guarded(chart); });
find("after").addEventListener("click", () => { sheet += 1; guarded(chart); });
find("drawing").addEventListener("change", () => { sheet = 1; guarded(chart); });
find("save-chart").addEventListener("click", () => {
  if (chartBlob) save(chartBlob, `${find("drawing").value}-${sheet}.svg`);
});
for (const button of document.querySelectorAll("button[data-accept]")) {
  button.addEventListener("click", () => guarded(async () => {
    begin("making " + button.textContent);
    const { extent } = button.dataset;
    const job = JSON.parse(answered);
    const body = extent ? JSON.stringify({ ...job, document: { ...job.document, extent } }) : answered;
    const response = await ask(button.dataset.accept, "/v1/takeoffs", body);
    if (!response.ok) { end(""); await tellProblem(response); return; }
    save(await response.blob(), (extent ?? "takeoff") + "." + button.dataset.ending);
    end(button.textContent + " is saved.");
  }));
}
