// The front page: a job goes to the service, its answer comes back as tables, drawings and files. No library, no build.
"use strict";

const find = (id) => document.getElementById(id);
const page = find("main");
const labels = JSON.parse(page.dataset.labels);
const LINES = "application/x-ndjson";
const DRAWING = "image/svg+xml";
let answered = "";          // the body that the shown answer belongs to
let running = null;         // what can be called off
let sheet = 1;
let attached = [];          // spreadsheets that go with what stands in the text
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
  find("bar").removeAttribute("value");
  find("state").textContent = words + "…";
  find("count").textContent = "";
  window.clearInterval(clock);
  clock = window.setInterval(() => {
    find("seconds").textContent = ((performance.now() - since) / 1000).toFixed(0) + " s";
  }, 500);
  find("stop").hidden = false;
}
const STAGES = {
  segments: "counting the segments", rail: "laying out the rail", stability: "tracing how hot track buckles",
  bill: "adding up the bill", answer: "writing the answer", explanation: "writing out the formulas",
};
function step({ stage, done, of }) {
  const words = (STAGES[stage] ?? stage) + "…";
  if (find("state").textContent !== words) find("state").textContent = words;   // read out once a stage, not at every step
  find("count").textContent = of > 1 ? `${plain.format(done)} of ${plain.format(of)}` : "";
  if (of > 1) { find("bar").max = of; find("bar").value = done; } else find("bar").removeAttribute("value");
}
function end(words) {
  window.clearInterval(clock);
  find("bar").hidden = true;
  find("stop").hidden = true;
  find("seconds").textContent = find("count").textContent = "";
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

async function* linesOf(response) {
  const reader = response.body.pipeThrough(new TextDecoderStream()).getReader();
  let parts = [];   // joined once a line is whole: an answer may be long and come in many pieces
  for (;;) {
    const { value, done } = await reader.read();
    if (done) return;
    const [first, ...rest] = value.split("\n");
    parts.push(first);
    for (const next of rest) { yield parts.join(""); parts = [next]; }
  }
}

// the answer to a job, told how far it is while it is worked; or the problem that there is
async function answerTo(body) {
  const response = await ask(LINES, "/v1/takeoffs", body);
  if (!response.ok) return { problem: await problemOf(response) };
  for await (const text of linesOf(response)) {
    const line = JSON.parse(text);
    if (!line.progress) return line;
    step(line.progress);
  }
  throw new Error("The answer was cut before its end; ask again.");
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

async function problemOf(response) {
  try { return await response.json(); } catch { return { title: "The service answered " + response.status, detail: "" }; }
}

function tellProblem(problem, places = {}) {
  const lines = (problem.errors ?? []).map((fault) => {
    const limits = [];
    if (fault.minimum !== undefined) limits.push("at least " + fault.minimum);
    if (fault.maximum !== undefined) limits.push("at most " + fault.maximum);
    const unit = fault.unit ? " " + (labels[fault.unit] ?? fault.unit) : "";
    const known = fault.allowed ? "; what would do: " + fault.allowed.slice(0, 12).join(", ") : "";
    const sent = fault.value !== undefined ? " (sent: " + fault.value + ")" : "";
    const place = [places[fault.pointer], fault.pointer].filter(Boolean).join(" ");
    return [place, fault.detail + sent + (limits.length ? "; " + limits.join(", ") + unit : "") + known];
  });
  trouble(problem.title, lines.length ? lines : [["", problem.detail]]);
}

// ------------------------------------------------------------------------------------------------ drawings and files that are saved

async function chart() {
  const drawing = find("drawing").value;
  begin("drawing");
  const response = await ask(DRAWING, `/v1/takeoffs?drawing=${drawing}&sheet=${sheet}`, answered);
  if (!response.ok) { end(""); tellProblem(await problemOf(response)); return; }
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
  find("go").disabled = true;
  try {
    const found = await request();
    if (!found) return;
    const { body, files } = found;
    const units = find("units").value;
    if (units && body && typeof body === "object") body.units = units;
    const text = JSON.stringify(body);
    begin("counting");
    const { answer, problem } = await answerTo(text);
    if (problem) {
      end("");
      find("answer").hidden = true;
      tellProblem(problem, await placesOf(problem, files));
      return;
    }
    answered = text;
    sheet = 1;
    find("drawing").dataset.segments = String(body.segments.length);
    show(answer);
    await chart();
    find("answer").focus();
  } finally {
    find("go").disabled = false;
  }
}

async function take(files) {
  const words = [];
  for (const file of files) {
    if (/\.(csv|tsv|txt|xlsx|xlsm)$/i.test(file.name) && page.dataset.files) {
      attached = [...attached.filter((one) => one.name !== file.name), file];
      words.push(file.name + " goes with the job");
    } else {
      find("job").value = await file.text();
      words.push(file.name + " is read");
    }
  }
  showFiles();
  end(words.join("; ") + "; answer it when ready.");
}

find("form").addEventListener("submit", (event) => { event.preventDefault(); guarded(answerJob); });
find("job").addEventListener("keydown", (event) => {
  if (event.key === "Enter" && (event.ctrlKey || event.metaKey)) { event.preventDefault(); find("form").requestSubmit(); }
});
find("stop").addEventListener("click", () => { running?.abort(); end("Called off."); });
find("choose").addEventListener("click", () => find("file").click());
find("file").addEventListener("change", (event) => {
  const files = [...event.target.files];
  event.target.value = "";   // the same file may be chosen again
  if (files.length) guarded(() => take(files));
});
find("demo").addEventListener("click", () => guarded(async () => {
  find("job").value = await (await fetch("/static/demo-job.json")).text();
  attached = [];
  showFiles();
  end("The demo job is in; change what you like, then answer it.");
}));
const drop = find("drop");
for (const name of ["dragenter", "dragover"]) drop.addEventListener(name, (event) => { event.preventDefault(); drop.classList.add("over"); });
for (const name of ["dragleave", "drop"]) drop.addEventListener(name, () => drop.classList.remove("over"));
drop.addEventListener("drop", (event) => {
  event.preventDefault();
  const files = [...event.dataTransfer.files];
  if (files.length) guarded(() => take(files));
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
    if (!response.ok) { end(""); tellProblem(await problemOf(response)); return; }
    save(await response.blob(), (extent ?? "takeoff") + "." + button.dataset.ending);
    end(button.textContent + " is saved.");
  }));
}
