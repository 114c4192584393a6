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

  /* Any answer of the server is an answer, except those that say: later, or sign in again. */
  const send = async (answer) => {
    const token = document.querySelector("input[name=token]");
    const fields = token ? { ...answer.fields, token: token.value } : answer.fields;
    const reply = await fetch(answer.to, { method: "POST", body: new URLSearchParams(fields), credentials: "same-origin" });
    if (reply.status >= 500 || reply.status === 429 || reply.status === 401 || reply.status === 403) {
      throw new Error("later");
    }
    drop(answer);
    return reply;
  };

  let sending = false;
  const sendKept = async () => {
    if (sending || !learner || !kept().length) {
      return;
    }
    sending = true;
    let sent = 0;
    try {
      for (const answer of kept()) {
        const reply = await send(answer);
        sent += 1;
        const form = document.querySelector("form.answer");
        if (form && form.elements.item.value === answer.fields.item) {
          location.assign(reply.url);
          return;
        }
      }
      if (sent) {
        say("sent");
      }
    } catch {
      say("waiting");
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
    answerForm.addEventListener("submit", async (event) => {
      if (!answerForm.querySelector("input[name=option]:checked")) {
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
        const reply = await send(answer);
        location.assign(reply.url);
      } catch {
        say("waiting");
        delete answerForm.dataset.busy;
        setTimeout(sendKept, 3000);
      }
    });
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
          const fresh = page.getElementById("sample");
          if (turn === asked && fresh) {
            document.getElementById("sample").replaceChildren(...fresh.childNodes);
          }
        } catch {
          /* the button still shows a sample */
        }
      }, 400);
    });
  }
})();
