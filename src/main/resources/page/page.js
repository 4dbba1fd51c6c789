'use strict';
(() => {
  const all = (query, root = document) => [...root.querySelectorAll(query)];
  const byId = id => document.getElementById(id);
  const elevation = byId('elevation'), slider = byId('step'), now = byId('now'), search = byId('search'), told = byId('told');
  const whole = elevation.getAttribute('viewBox').split(' ').map(Number);
  const items = all('[data-layer]', elevation), marks = all('.wp'), ways = all('.way'), findings = all('.f'), layers = all('[data-l]');
  const paper = elevation.dataset.paper.split(' ').map(Number);
  const words = new Map(findings.map(f => [f, f.textContent.toLowerCase()])), front = byId('front');
  const last = Number(slider.max), calm = matchMedia('(prefers-reduced-motion: reduce)');
  let chosen = 0, shown = whole, moving = 0, running = 0, digits = '', digitsUntil = 0;

  const numberOf = element => Number(element.dataset.weak || element.dataset.way);
  const finding = n => findings.find(f => numberOf(f) === n);

  // Layers and laying order: what of the elevation is there.
  function draw() {
    const off = new Set(layers.filter(box => !box.checked).map(box => box.dataset.l)), step = Number(slider.value);
    for (const item of items) {
      item.classList.toggle('off', Number(item.dataset.step) > step || item.dataset.layer.split(' ').some(l => off.has(l)));
    }
    const laid = step === last;
    for (const mark of marks) {
      const hidden = numberOf(mark) !== chosen && (!laid || off.has('weak'));
      mark.classList.toggle('off', hidden);
    }
    const piece = step ? all('li', byId('steps'))[step - 1].textContent : '';
    now.textContent = step === 0 ? 'bare frame' : step + ' of ' + last + ': ' + piece;
    slider.setAttribute('aria-valuetext', now.textContent);
    byId('back').disabled = step === 0;
    byId('on').disabled = laid;
  }

  function lay(by) {
    slider.value = Number(slider.value) + by;
    draw();
  }

  // The part of the elevation that is shown.
  function show(box, smoothly) {
    cancelAnimationFrame(moving);
    const from = shown, start = performance.now(), time = smoothly && !calm.matches ? 350 : 0;
    const step = at => {
      const share = time ? Math.min(1, (at - start) / time) : 1, ease = share * (2 - share);
      shown = box.map((v, i) => from[i] + (v - from[i]) * ease);
      elevation.setAttribute('viewBox', shown.map(v => v.toFixed(3)).join(' '));
      if (share < 1) {
        moving = requestAnimationFrame(step);
      }
    };
    if (time) {
      moving = requestAnimationFrame(step);
    } else {
      step(start);
    }
    byId('whole').disabled = box.every((v, i) => Math.abs(v - whole[i]) < 0.01);
  }

  // Never beyond the drawing, never nearer than a tenth of it.
  function inside([x, y, w, h]) {
    const f = Math.max(Math.min(1, whole[2] / w, whole[3] / h), whole[2] / 12 / w);
    const width = w * f, height = h * f, left = x + (w - width) / 2, top = y + (h - height) / 2;
    return [Math.max(whole[0], Math.min(left, whole[0] + whole[2] - width)), Math.max(whole[1], Math.min(top, whole[1] + whole[3] - height)), width, height];
  }

  function zoom(by) {
    const [x, y, w, h] = shown;
    show(inside([x + w * (1 - by) / 2, y + h * (1 - by) / 2, w * by, h * by]), true);
  }

  function pan(dx, dy) {
    const [x, y, w, h] = shown;
    show(inside([x + dx * w, y + dy * h, w, h]), false);
  }

  function zoomTo(n) {
    show(inside(finding(n).dataset.focus.split(' ').map(Number)), true);
  }

  // The water runs its way over the elevation, step by step; the list keeps pace.
  function run(n) {
    clearTimeout(running);
    for (const way of ways) {
      way.classList.toggle('on', numberOf(way) === n);
    }
    all('li.here').forEach(li => li.classList.remove('here'));
    const way = ways.find(w => numberOf(w) === n);
    if (!way) {
      return;
    }
    const legs = all('.leg', way), steps = all('.way-in li', finding(n));
    legs.forEach(leg => leg.classList.toggle('off', !calm.matches));
    const next = i => {
      steps.forEach((li, k) => li.classList.toggle('here', k === i && i < legs.length));
      if (i < legs.length) {
        legs[i].classList.remove('off');
        running = setTimeout(() => next(i + 1), 700);
      }
    };
    if (!calm.matches) {
      next(0);
    }
  }

  function choose(n, from) {
    chosen = finding(n) ? n : 0;
    for (const mark of marks) {
      mark.classList.toggle('on', numberOf(mark) === chosen);
      mark.setAttribute('aria-pressed', String(numberOf(mark) === chosen));
    }
    for (const f of findings) {
      const is = numberOf(f) === chosen;
      f.classList.toggle('on', is);
      f.querySelector('.head').setAttribute('aria-expanded', String(is));
    }
    elevation.classList.toggle('has', chosen > 0);
    bringForward();
    history.replaceState(null, '', chosen ? '#weak-' + chosen : location.pathname + location.search);
    if (chosen) {
      slider.value = last;
      finding(chosen).hidden = false;
      if (from !== 'list') {
        bring(finding(chosen));
      }
      told.textContent = finding(chosen).querySelector('.head').getAttribute('aria-label');
      zoomTo(chosen);
    } else {
      told.textContent = 'no weak point chosen';
      show(whole, true);
    }
    draw();
    run(chosen);
    document.dispatchEvent(new Event('chosen'));
  }

  // The chosen mark once more, before all others; the rule's page into its finding.
  function bringForward() {
    const copies = marks.filter(mark => chosen && numberOf(mark) === chosen).map(mark => mark.cloneNode(true));
    for (const copy of copies) {
      ['tabindex', 'role', 'aria-pressed', 'aria-label'].forEach(name => copy.removeAttribute(name));
      copy.classList.remove('off');
    }
    front.replaceChildren(...copies);
    const place = chosen && finding(chosen).querySelector('[data-rule]');
    if (place) {
      place.append(...all('details[data-page]').filter(page => page.dataset.page === place.dataset.rule));
    }
  }

  // Into view in the list, beneath whatever stays on top.
  function bring(f) {
    f.scrollIntoView({block: 'start', behavior: calm.matches ? 'auto' : 'smooth'});
  }

  function move(by) {
    const list = findings.filter(f => !f.hidden);
    if (list.length) {
      const at = list.findIndex(f => numberOf(f) === chosen);
      const next = list[at < 0 ? (by > 0 ? 0 : list.length - 1) : Math.max(0, Math.min(list.length - 1, at + by))];
      choose(numberOf(next), 'key');
      next.querySelector('.head').focus({preventScroll: true});
    }
  }

  // Figures typed close together make one number; 0 alone shows the whole wall.
  function figure(key) {
    digits = digits && performance.now() < digitsUntil ? digits + key : key;
    digitsUntil = performance.now() + 900;
    if (digits === '0') {
      show(whole, true);
    } else if (finding(Number(digits))) {
      choose(Number(digits), 'key');
    }
  }

  function filter() {
    const wanted = search.value.toLowerCase().split(/\s+/).filter(Boolean);
    let found = 0;
    for (const f of findings) {
      f.hidden = !wanted.every(w => words.get(f).includes(w));
      found += f.hidden ? 0 : 1;
    }
    byId('found').textContent = wanted.length ? found + ' of ' + findings.length : '';
    byId('none').hidden = found > 0 || !findings.length;
    if (wanted.length && found) {
      findings.find(f => !f.hidden).scrollIntoView({block: 'nearest'});
    }
  }

  const keys = {
    j: () => move(1), k: () => move(-1), '[': () => lay(-1), ']': () => lay(1), p: () => print(), '/': () => search.focus(),
    '+': () => zoom(0.7), '-': () => zoom(1 / 0.7), Escape: () => {
      search.value = '';
      filter();
      choose(0);
    }
  };
  const arrows = {ArrowLeft: [-0.15, 0], ArrowRight: [0.15, 0], ArrowUp: [0, -0.15], ArrowDown: [0, 0.15]};

  document.addEventListener('keydown', event => {
    const key = event.key.length === 1 ? event.key.toLowerCase() : event.key, at = document.activeElement;
    if (event.ctrlKey || event.metaKey || event.altKey || (at === search && key !== 'Escape')) {
      return;
    }
    if (/^[0-9]$/.test(key)) {
      figure(key);
      event.preventDefault();
      return;
    }
    digits = '';
    if (keys[key]) {
      keys[key]();
    } else if (arrows[key] && elevation.contains(at)) {
      pan(...arrows[key]);
    } else if ((key === 'Enter' || key === ' ') && at.classList.contains('wp')) {
      choose(numberOf(at) === chosen ? 0 : numberOf(at), 'mark');
    } else {
      return;
    }
    event.preventDefault();
  });

  for (const mark of marks) {
    const head = finding(numberOf(mark)).querySelector('.head');
    for (const [name, value] of [['tabindex', '0'], ['role', 'button'], ['aria-pressed', 'false'], ['aria-label', head.getAttribute('aria-label')]]) {
      mark.setAttribute(name, value);
    }
    mark.addEventListener('click', () => choose(numberOf(mark) === chosen ? 0 : numberOf(mark), 'mark'));
  }
  for (const f of findings) {
    f.querySelector('.head').addEventListener('click', () => choose(numberOf(f) === chosen ? 0 : numberOf(f), 'list'));
    const hot = is => () => marks.filter(m => numberOf(m) === numberOf(f)).forEach(m => m.classList.toggle('hot', is));
    f.addEventListener('pointerenter', hot(true));
    f.addEventListener('pointerleave', hot(false));
    f.querySelector('.again')?.addEventListener('click', () => run(numberOf(f)));
  }
  layers.forEach(box => box.addEventListener('change', draw));
  slider.addEventListener('input', draw);
  search.addEventListener('input', filter);
  byId('back').addEventListener('click', () => lay(-1));
  byId('on').addEventListener('click', () => lay(1));
  byId('nearer').addEventListener('click', keys['+']);
  byId('further').addEventListener('click', keys['-']);
  byId('whole').addEventListener('click', () => show(whole, true));
  byId('print').addEventListener('click', () => print());
  byId('clear').addEventListener('click', keys.Escape);

  // Dragging moves what is shown, once it is enlarged; whole, a finger scrolls the page.
  let grip = null, dragged = false;
  elevation.addEventListener('pointerdown', event => {
    grip = shown[2] < whole[2] - 0.01 ? {x: event.clientX, y: event.clientY, box: shown} : null;
    dragged = false;
  });
  elevation.addEventListener('pointermove', event => {
    if (!grip || !event.buttons) {
      return;
    }
    const r = elevation.getBoundingClientRect(), f = Math.max(grip.box[2] / r.width, grip.box[3] / r.height);
    const dx = event.clientX - grip.x, dy = event.clientY - grip.y;
    if (dragged || Math.hypot(dx, dy) > 5) {
      dragged = true;
      elevation.setPointerCapture(event.pointerId);
      show(inside([grip.box[0] - dx * f, grip.box[1] - dy * f, grip.box[2], grip.box[3]]), false);
    }
  });
  elevation.addEventListener('click', event => {
    if (dragged) {
      event.stopPropagation();
    }
  }, true);

  // On paper the elevation is whole and true to scale, with every weak point of the list.
  let before = null;
  addEventListener('beforeprint', () => {
    before = shown;
    show(paper, false);
  });
  addEventListener('afterprint', () => show(before || whole, false));
  addEventListener('hashchange', fromAddress);
  function fromAddress() {
    const named = /^#weak-([0-9]+)$/.exec(location.hash);
    choose(named ? Number(named[1]) : 0, 'address');
  }

  // What stays on top of the list and of the page is known only once it is laid out.
  function measure() {
    document.documentElement.style.setProperty('--head', document.querySelector('main').offsetTop + 'px');
    document.querySelector('aside').style.scrollPaddingTop = document.querySelector('.find').offsetHeight + 'px';
  }
  addEventListener('resize', measure);

  document.body.classList.add('live');
  measure();
  draw();
  filter();
  if (location.hash) {
    fromAddress();
  }
})();
