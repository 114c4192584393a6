"use strict";
/*
 * Only betters what works without it: runs the boat along her way, steps her from mark to mark by
 * keys, and asks the server what a place is that somebody presses on, and how many have answered.
 */
(() => {
  const count = document.getElementById("count");
  if (count && count.dataset.count) {
    document.getElementById("again").hidden = true;
    setInterval(async () => {
      try {
        const reply = await fetch(count.dataset.count, { credentials: "same-origin" });
        const told = await reply.json();
        if (told.revealed) {
          location.reload();
        } else if (reply.ok && count.textContent !== told.words) {
          count.textContent = told.words;
        }
      } catch {
        /* the next turn counts again */
      }
    }, 2000);
  }

  const water = document.getElementById("water");
  if (!water || !water.dataset.voyage) {
    return;
  }
  const voyage = JSON.parse(water.dataset.voyage);
  const over = water.querySelectorAll(":scope > svg")[1];
  const boat = over.querySelector(".boat");
  const cross = over.querySelector(".cross");
  const ring = over.querySelector(".ring");
  const [name, order] = document.querySelectorAll("#call p");
  const run = document.getElementById("run");
  const back = document.getElementById("back");
  const on = document.getElementById("on");
  const looked = document.getElementById("looked");
  const stands = matchMedia("(prefers-reduced-motion: reduce)");
  const SPEED = 45; /* metres in a second: a mark every five seconds or so */
  const end = (voyage.fixes.length - 1) * voyage.between;
  const units = (x, y) => [voyage.left + voyage.scale * x, voyage.bottom - voyage.scale * y];

  /* Puts a sign where it belongs; without a place it is hidden. */
  const put = (sign, metres) => {
    if (metres.length) {
      const [x, y] = units(metres[0], metres[1]);
      sign.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)})`);
    }
    sign.setAttribute("visibility", metres.length ? "visible" : "hidden");
  };

  /* Where she is, in metres from the beginning of her way. */
  const asked = new URL(location).searchParams;
  let step = Math.min(Number(asked.get("step")) || 0, voyage.steps.length - 1);
  let along = voyage.steps[step][0];
  let running = false;
  let last = 0;

  const fixAt = (metres) => voyage.fixes[Math.max(0, Math.min(voyage.fixes.length - 1, Math.round(metres / voyage.between)))];
  const turned = (from, to) => ((to - from + 540) % 360) - 180;

  const place = () => {
    const at = Math.min(along / voyage.between, voyage.fixes.length - 1);
    const from = voyage.fixes[Math.floor(at)];
    const to = voyage.fixes[Math.min(voyage.fixes.length - 1, Math.floor(at) + 1)];
    const share = at - Math.floor(at);
    const [x, y] = units(from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1]));
    const heading = from[2] + share * turned(from[2], to[2]);
    boat.setAttribute("transform", `translate(${x.toFixed(2)} ${y.toFixed(2)}) rotate(${heading.toFixed(1)})`);
    const fix = fixAt(along);
    document.getElementById("heading").textContent = fix[3];
    document.getElementById("water-here").textContent = fix[4];
    document.getElementById("least").textContent = fix[5];
  };

  /* The question about the next mark names it; without one to ask about it is not offered. */
  const offer = (questions, words) => {
    const offered = questions.querySelector("[value=next-mark]");
    if (!words) {
      offered?.remove();
    } else if (offered) {
      offered.textContent = words;
    } else {
      questions.prepend(new Option(words, "next-mark"));
    }
  };

  const say = (number) => {
    step = number;
    name.textContent = voyage.steps[step][1];
    order.textContent = voyage.steps[step][2];
    put(ring, voyage.steps[step][3]);
    const address = new URL(location);
    address.searchParams.set("step", String(step));
    history.replaceState(null, "", address);
    document.querySelectorAll(".keep a").forEach((link) => {
      const kept = new URL(link.href);
      kept.searchParams.set("step", String(step));
      link.href = kept.href;
    });
    const form = document.querySelector("#ask form");
    if (form) {
      offer(form.elements.question, voyage.steps[step][4]);
      const put = new URL(form.action);
      put.searchParams.set("step", String(step));
      form.action = put.href;
    }
  };

  const hold = () => {
    running = false;
    run.textContent = run.dataset.run;
  };

  const show = (number) => {
    hold();
    const next = Math.max(0, Math.min(voyage.steps.length - 1, number));
    along = voyage.steps[next][0];
    say(next);
    place();
  };

  const tick = (now) => {
    if (!running) {
      return;
    }
    along = Math.min(end, along + (SPEED * Math.min(400, now - last)) / 1000);
    last = now;
    const next = voyage.steps.findLastIndex((each) => each[0] <= along + 0.01);
    if (next !== step && next >= 0) {
      say(next);
    }
    place();
    if (along >= end) {
      hold();
    } else {
      requestAnimationFrame(tick);
    }
  };

  const start = () => {
    if (stands.matches) {
      show(step + 1);
      return;
    }
    if (along >= end) {
      show(0);
    }
    running = true;
    run.textContent = run.dataset.hold;
    requestAnimationFrame((now) => {
      last = now;
      tick(now);
    });
  };
  const toggle = () => (running ? hold() : start());

  run.hidden = stands.matches;
  stands.addEventListener("change", () => {
    run.hidden = stands.matches;
    hold();
  });
  run.addEventListener("click", toggle);
  const stepper = (link, by) =>
    link.addEventListener("click", (event) => {
      event.preventDefault();
      show(step + by);
    });
  stepper(back, -1);
  stepper(on, 1);

  /* The place that is looked at, in metres. */
  const view = over.viewBox.baseVal;
  let at = null;
  let turn = 0;
  const look = async () => {
    const mine = ++turn;
    put(cross, at);
    const address = new URL(water.dataset.place, location);
    address.searchParams.set("step", String(step));
    address.searchParams.set("at", at.map((each) => each.toFixed(1)).join(","));
    try {
      const reply = await fetch(address, { credentials: "same-origin" });
      if (!reply.ok || mine !== turn) {
        return;
      }
      const told = await reply.json();
      const rows = told.words.map((words) => {
        const row = document.createElement("p");
        row.textContent = words;
        return row;
      });
      if (told.take) {
        const row = document.createElement("p");
        const link = document.createElement("a");
        link.href = told.take.href;
        link.textContent = told.take.text;
        row.append(link);
        rows.push(row);
      }
      looked.replaceChildren(...rows);
    } catch {
      /* the next press asks again */
    }
  };

  water.addEventListener("click", (event) => {
    const matrix = over.getScreenCTM().inverse();
    const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    at = [(point.x - voyage.left) / voyage.scale, (voyage.bottom - point.y) / voyage.scale];
    look();
  });

  let waiting;
  const moves = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
  water.addEventListener("keydown", (event) => {
    if (event.key === " ") {
      event.preventDefault();
      toggle();
      return;
    }
    const move = moves[event.key];
    if (!move || event.altKey || event.ctrlKey || event.metaKey) {
      return;
    }
    event.preventDefault();
    const west = (view.x - voyage.left) / voyage.scale;
    const north = (voyage.bottom - view.y) / voyage.scale;
    const width = view.width / voyage.scale;
    const height = view.height / voyage.scale;
    const far = event.shiftKey ? width / 12 : width / 80;
    const from = at || [fixAt(along)[0], fixAt(along)[1]];
    at = [
      Math.max(west, Math.min(west + width, from[0] + move[0] * far)),
      Math.max(north - height, Math.min(north, from[1] + move[1] * far)),
    ];
    put(cross, at);
    clearTimeout(waiting);
    waiting = setTimeout(look, 150);
  });

  addEventListener("keydown", (event) => {
    if (event.key === "PageDown" || event.key === "PageUp") {
      event.preventDefault();
      show(step + (event.key === "PageDown" ? 1 : -1));
    }
  });
})();
