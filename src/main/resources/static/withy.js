"use strict";
/*
 * Only betters what works without it: measures how long an item was looked at, keeps an answer that
 * the network lost and sends it again, refreshes the sample of a drill being composed.
 */
(() => {
  const learner = document.body.dataset.learner;
  const drawer = "withy.kept." + learner;
  const notice = document.getElementById("kept");

  const kept = () => {
    try {
      return JSON.parse(localStorage.getItem(drawer) || "[]");
    } catch {
      return [];
    }
  };
  const keep = (answers) => {
    try {
      if (answers.length) {
        localStorage.setItem(drawer, JSON.stringify(answers));
      } else {
        localStorage.removeItem(drawer);
      }
    } catch {
      /* a browser that keeps nothing still sends */
    }
  };
  const put = (answer) => keep([...kept().filter((each) => each.fields.response !== answer.fields.response), answer]);
  const drop = (answer) => keep(kept().filter((each) => each.fields.response !== answer.fields.response));
  const say = (what) => {
    notice.textContent = notice.dataset[what];
    notice.hidden = false;
  };

  /* An answer is out of our hands once the server has ruled on it; until then it is kept. */
  const send = async (answer, asked) => {
    const token = document.querySelector("input[name=token]");
    const fields = token ? { ...answer.fields, token: token.value } : answer.fields;
    const reply = await fetch(answer.to, { method: "POST", body: new URLSearchParams(fields), credentials: "same-origin" });
    const drill = new URL(answer.to).pathname.replace(/\/answers$/, "");
    if (reply.ok && new URL(reply.url).pathname.startsWith(drill)) {
      drop(answer);
      return reply.url;
    }
    if ([404, 409, 422].includes(reply.status)) {
      drop(answer);
      if (asked && reply.status === 422) {
        throw new Error("again");
      }
      return drill;
    }
    throw new Error(reply.ok ? "out" : "waiting");
  };
  const sorry = (error) => say(error.message === "out" ? "out" : "waiting");

  let sending = false;
  const sendKept = async () => {
    if (sending || !learner || !kept().length) {
      return;
    }
    sending = true;
    let sent = 0;
    try {
      for (const answer of kept()) {
        const next = await send(answer);
        sent += 1;
        const item = document.querySelector("form.answer input[name=item]");
        if (item && item.value === answer.fields.item) {
          location.assign(next);
          return;
        }
      }
      if (sent) {
        say("sent");
      }
    } catch (error) {
      sorry(error);
      setTimeout(sendKept, 5000);
    } finally {
      sending = false;
    }
  };
  addEventListener("online", sendKept);
  sendKept();

  const answerForm = document.querySelector("form.answer");
  if (answerForm) {
    const begun = performance.now();
    const isChosen = (within) => within.querySelector("input:checked") !== null;
    const isComplete = () => {
      const slots = [...answerForm.querySelectorAll(".slot")];
      const number = answerForm.elements.number;
      const unsure = answerForm.querySelector(".unsure");
      return isChosen(unsure) || (number ? number.value.trim() !== "" : slots.length ? slots.every(isChosen) : isChosen(answerForm));
    };
    answerForm.addEventListener("submit", async (event) => {
      if (!isComplete()) {
        return;
      }
      event.preventDefault();
      if (answerForm.dataset.busy) {
        return;
      }
      answerForm.dataset.busy = "yes";
      answerForm.elements.shownMs.value = String(Math.round(performance.now() - begun));
      const answer = { to: answerForm.action, fields: Object.fromEntries(new FormData(answerForm)) };
      put(answer);
      try {
        location.assign(await send(answer, true));
      } catch (error) {
        if (error.message === "again") {
          answerForm.submit(); /* the page comes back with what is to be mended */
          return;
        }
        sorry(error);
        delete answerForm.dataset.busy;
        setTimeout(sendKept, 3000);
      }
    });
  }

  /* Whoever waits at home sees at once what was put to the room. */
  const home = document.querySelector("main[data-listed]");
  if (home) {
    setInterval(async () => {
      if (document.hidden) {
        return;
      }
      try {
        const reply = await fetch("/api/assignments", { credentials: "same-origin" });
        const listed = reply.ok ? (await reply.json()).map((each) => each.id).join(" ") : home.dataset.listed;
        if (listed !== home.dataset.listed) {
          location.reload();
        }
      } catch {
        /* the next turn looks again */
      }
    }, 4000);
  }

  const compose = document.getElementById("compose");
  if (compose) {
    let waiting;
    let asked = 0;
    compose.addEventListener("change", () => {
      clearTimeout(waiting);
      waiting = setTimeout(async () => {
        const turn = ++asked;
        const fields = new URLSearchParams(new FormData(compose));
        fields.set("do", "sample");
        try {
          const reply = await fetch(compose.action, { method: "POST", body: fields, credentials: "same-origin" });
          const page = new DOMParser().parseFromString(await reply.text(), "text/html");
          for (const id of turn === asked ? ["sample", "count", "asked-now", "where-now", "how-now"] : []) {
            document.getElementById(id).replaceChildren(...page.getElementById(id).childNodes);
          }
        } catch {
          /* the button still shows a sample */
        }
      }, 400);
    });
  }
})();
