// The front page: a job that stands in files, and where in them what is wrong stands.
"use strict";

async function coded(name, blob) {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  let text = "";
  for (let at = 0; at < bytes.length; at += 32768) text += String.fromCharCode(...bytes.subarray(at, at + 32768));
  return { name, content: btoa(text) };
}

function readFiles(files, pointers) {
  return ask("application/json", page.dataset.files, JSON.stringify(pointers ? { files, pointers } : { files }));
}

// the request that stands in the text and the files beside it; undefined where what is wrong has been told
async function request() {
  const text = find("job").value;
  const looksLikeJson = /^\s*[{[]/.test(text);
  if (!attached.length && (looksLikeJson || !page.dataset.files)) {
    try {
      return { body: JSON.parse(text) };
    } catch (error) {
      trouble("This is not JSON yet", [["", String(error.message)]]);
      return undefined;
    }
  }
  const files = await Promise.all(attached.map((file) => coded(file.name, file)));
  if (text.trim()) files.unshift(await coded(looksLikeJson ? "job.json" : "job.toml", new Blob([text])));
  begin("reading the files");
  const response = await readFiles(files);
  if (!response.ok) { end(""); find("answer").hidden = true; tellProblem(await problemOf(response)); return undefined; }
  return { body: await response.json(), files };
}

function showFiles() {
  const list = find("files");
  list.replaceChildren(...attached.map((file) => {
    const item = element("li", file.name);
    const out = element("button", "Take out");
    out.type = "button";
    out.setAttribute("aria-label", "Take out " + file.name);
    out.addEventListener("click", () => { attached = attached.filter((one) => one !== file); showFiles(); find("choose").focus(); });
    item.append(out);
    return item;
  }));
  list.hidden = !attached.length;
  find("job").required = !attached.length;
}

// where in the files what is wrong stands: row and column of a spreadsheet
async function placesOf(problem, files) {
  const pointers = (problem.errors ?? []).map((fault) => fault.pointer).filter(Boolean).slice(0, 200);
  if (!files || !pointers.length) return {};
  const response = await readFiles(files, pointers);
  return response.ok ? response.json() : {};
}
