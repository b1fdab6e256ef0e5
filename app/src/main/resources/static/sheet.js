// Enter goes down a row, cells of a spreadsheet are pasted over as many rows as they have.
(() => {
  "use strict";
  const grid = document.getElementById("grid");
  const body = grid.tBodies[0];

  function cells(row) {
    return Array.from(row.querySelectorAll("td input, td select"));
  }

  function newId() {
    const b = crypto.getRandomValues(new Uint8Array(16));
    b[6] = (b[6] & 0x0f) | 0x40;
    b[8] = (b[8] & 0x3f) | 0x80;
    const hex = Array.from(b, (x) => x.toString(16).padStart(2, "0")).join("");
    return hex.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
  }

  function addRow() {
    const last = body.rows[body.rows.length - 1];
    const row = last.cloneNode(true);
    const number = body.rows.length + 1;
    for (const field of row.querySelectorAll("input, select")) {
      field.name = field.name.replace(/^r\d+-/, "r" + number + "-");
      if (field.id) {
        field.id = field.name;
      }
      if (field.type !== "hidden") {
        field.value = "";
        field.removeAttribute("aria-invalid");
        field.removeAttribute("aria-describedby");
        field.setAttribute("aria-label", field.getAttribute("aria-label").replace(/\d+$/, String(number)));
      }
    }
    for (const said of row.querySelectorAll(".problem, .now")) {
      said.remove();
    }
    row.querySelector('input[name$="-id"]').value = newId();
    row.querySelector('input[name$="-revision"]').value = "0";
    row.querySelector("th").firstChild.textContent = "new " + number;
    body.append(row);
    return row;
  }

  function put(field, text) {
    const value = text.trim();
    if (field.tagName === "SELECT" && value !== "") {
      const same = Array.from(field.options).find((option) =>
        [option.value, option.text].some((known) => known.toLowerCase() === value.toLowerCase()));
      if (same) {
        field.value = same.value;
      } else {
        // Kept as it was pasted; the program will say what is wrong with it.
        field.add(new Option(value, value, false, true));
      }
    } else {
      field.value = value;
    }
  }

  grid.addEventListener("keydown", (event) => {
    const field = event.target;
    if (event.key !== "Enter" || !field.closest("td")) {
      return;
    }
    event.preventDefault();
    const row = field.closest("tr");
    const place = cells(row).indexOf(field);
    const below = event.shiftKey ? row.previousElementSibling : row.nextElementSibling || addRow();
    if (below) {
      cells(below)[place].focus();
    }
  });

  grid.addEventListener("paste", (event) => {
    const field = event.target;
    const text = event.clipboardData.getData("text/plain").replace(/\r\n?/g, "\n").replace(/\n$/, "");
    if (!field.closest("td") || !/[\t\n]/.test(text)) {
      return;
    }
    event.preventDefault();
    let row = field.closest("tr");
    const first = cells(row).indexOf(field);
    text.split("\n").forEach((line, index) => {
      if (index > 0) {
        row = row.nextElementSibling || addRow();
      }
      const targets = cells(row);
      line.split("\t").forEach((value, i) => {
        if (first + i < targets.length) {
          put(targets[first + i], value);
        }
      });
    });
  });
})();
