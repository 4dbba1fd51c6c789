'use strict';
// Keeps a served page up to date: reloads it when the file was drawn anew, shows what is wrong with the file when it was not.
(() => {
  const problems = document.getElementById('problems'), lost = document.getElementById('lost'), drawing = problems.dataset.drawing;
  const all = query => [...document.querySelectorAll(query)], one = query => document.querySelector(query), KEPT = 'rainlap-view';
  const name = finding => finding && finding.querySelector('.r').textContent + ' ' + finding.querySelector('.p').textContent;

  // What the reader had set outlives the reload; numbers of weak points may have changed, so the chosen one is kept by rule, pieces and place.
  function keep() {
    const step = one('#step');
    sessionStorage.setItem(KEPT, JSON.stringify(step ? {
      layers: all('[data-l]').map(box => [box.dataset.l, box.checked]), step: step.value === step.max ? null : step.value,
      search: one('#search').value, chosen: name(one('.f.on')), list: one('aside').scrollTop, page: scrollY
    } : {}));
  }

  function restore() {
    const kept = JSON.parse(sessionStorage.getItem(KEPT) || '{}'), step = one('#step');
    sessionStorage.removeItem(KEPT);
    if (!step || !kept.layers) {
      return;
    }
    const set = (input, property, value, event) => {
      input[property] = value;
      input.dispatchEvent(new Event(event));
    };
    const chosen = all('.f').find(f => name(f) === kept.chosen);
    location.hash = chosen ? chosen.id : '';
    for (const [layer, on] of kept.layers) {
      all('[data-l]').filter(box => box.dataset.l === layer).forEach(box => set(box, 'checked', on, 'change'));
    }
    set(one('#search'), 'value', kept.search, 'input');
    // Choosing by address comes after this, and lays all.
    setTimeout(() => {
      if (kept.step !== null) {
        set(step, 'value', kept.step, 'input');
      }
      one('aside').scrollTo({top: kept.list, behavior: 'instant'});
      scrollTo({top: kept.page, behavior: 'instant'});
    }, 60);
  }

  async function look() {
    problems.innerHTML = await (await fetch('problems')).text();
    dispatchEvent(new Event('resize'));
  }

  // The chosen place as it should be is drawn when it is asked for.
  async function should() {
    const place = one('.f.on [data-should]');
    if (place) {
      const answer = await fetch('should/' + place.dataset.should);
      place.removeAttribute('data-should');
      place.innerHTML = answer.ok ? await answer.text() : '';
    }
  }
  document.addEventListener('chosen', should);

  const events = new EventSource('events');
  events.addEventListener('state', event => {
    lost.hidden = true;
    if (event.data === drawing) {
      look();
    } else {
      keep();
      location.reload();
    }
  });
  events.onerror = () => {
    lost.hidden = false;
    lost.textContent = 'The connection to rainlap view is lost: this page shows the file as it was then.';
    dispatchEvent(new Event('resize'));
  };
  restore();
  should();
})();
