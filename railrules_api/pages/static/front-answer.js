// The front page: the answer to a job as tables.
"use strict";

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
    // an input is named; why a check cannot be made is told in a phrase
    const why = check.governing.includes(" ") ? check.governing : "needs " + check.governing.replaceAll("_", " ");
    const lacks = needs.length ? "needs " + needs.join(" or ") : why;
    const advice = check.verdict === "not-checked" ? lacks : check.would_pass || "—";
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
