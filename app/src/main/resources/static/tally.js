// Taps are sent one after the other and kept until the program has said that they are saved.
(() => {
  "use strict";
  const AGAIN_AFTER_MS = 5000;
  const form = document.getElementById("taps");
  const state = document.getElementById("tap-state");
  const store = "taps " + form.getAttribute("action");
  let queue = load();
  let sending = false;
  let problem = "";

  function load() {
    try {
      return JSON.parse(sessionStorage.getItem(store)) || [];
    } catch (e) {
      return [];
    }
  }

  function keep() {
    try {
      sessionStorage.setItem(store, JSON.stringify(queue));
    } catch (e) {
      // Without a store they are kept as long as the page is open.
    }
  }

  function newId() {
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    return Array.from(bytes, (b) => b.toString(16).padStart(2, "0")).join("");
  }

  function here(tap) {
    return ["house", "nest", "tunnel"].every((name) => tap[name] === form.elements[name].value);
  }

  function show() {
    for (const count of form.querySelectorAll("[data-count]")) {
      const saved = Number(count.dataset.saved ?? count.textContent);
      count.dataset.saved = String(saved);
      const waiting = queue.filter((tap) => tap.found === count.dataset.count && here(tap)).length;
      count.textContent = String(saved + waiting);
      count.closest("button").classList.toggle("waiting", waiting > 0);
    }
    if (queue.length === 0) {
      state.replaceChildren();
      state.className = "";
    } else if (problem) {
      const again = document.createElement("button");
      again.type = "button";
      again.textContent = "Try again";
      again.addEventListener("click", () => send());
      state.replaceChildren(
        queue.length + (queue.length === 1 ? " tap is" : " taps are") + " not saved yet, but kept here: " + problem + " ", again);
      state.className = "tap-problem";
    } else {
      state.textContent = "saving…";
      state.className = "";
    }
  }

  function take(page) {
    const fresh = new DOMParser().parseFromString(page, "text/html").getElementById("totals");
    if (!fresh) {
      throw new Error("the answer was not understood.");
    }
    document.getElementById("totals").replaceWith(document.importNode(fresh, true));
    for (const row of document.querySelectorAll("#causes tr[data-found]")) {
      const count = form.querySelector('[data-count="' + row.dataset.found + '"]');
      count.dataset.saved = row.querySelector("td").textContent.trim();
    }
  }

  async function send() {
    if (sending) {
      return;
    }
    sending = true;
    problem = "";
    while (queue.length > 0 && !problem) {
      const tap = queue[0];
      const csrf = form.querySelector('input[type="hidden"]');
      const body = new URLSearchParams({
        [csrf.name]: csrf.value, tap: tap.tap, found: tap.found,
        house: tap.house, nest: tap.nest, tunnel: tap.tunnel, who: form.elements.who.value,
      });
      try {
        const answer = await fetch(tap.to, { method: "POST", body, headers: { "X-Nestyear-Tap": "1" } });
        if (answer.ok) {
          const page = await answer.text();
          queue.shift();
          keep();
          if (here(tap)) {
            take(page);
          }
        } else {
          problem = answer.status === 403
            ? "this page is out of date, open it anew."
            : "Nestyear refused it (" + answer.status + ").";
        }
      } catch (e) {
        problem = "Nestyear does not answer.";
      }
      show();
    }
    sending = false;
    if (problem) {
      setTimeout(send, AGAIN_AFTER_MS);
    }
  }

  form.addEventListener("submit", (event) => {
    const button = event.submitter;
    if (!button) {
      return;
    }
    event.preventDefault();
    queue.push({
      to: button.getAttribute("formaction") || form.getAttribute("action"),
      found: button.name === "found" ? button.value : "",
      tap: newId(),
      house: form.elements.house.value,
      nest: form.elements.nest.value,
      tunnel: form.elements.tunnel.value,
    });
    keep();
    show();
    send();
  });

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.repeat || event.target.closest("input, select, textarea")) {
      return;
    }
    const button = form.querySelector('button[data-key="' + CSS.escape(event.key.toLowerCase()) + '"]');
    if (button) {
      event.preventDefault();
      button.click();
    }
  });

  if (queue.length > 0) {
    show();
    send();
  }
})();
