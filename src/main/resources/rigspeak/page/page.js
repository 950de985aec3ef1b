'use strict';
// Shows each board that the server sends. Whatever was said goes onto the page as text, never as markup.
(() => {
  const SILENT_MS = 25000;
  const TURN_MS = 150;
  const byId = (id) => document.getElementById(id);
  const calm = matchMedia('(prefers-reduced-motion: reduce)');
  let source = null;
  let lastEvent = 0;
  let units = null;

  // A text that does not change is not put in again: a screen reader would read it again.
  const text = (id, words) => {
    const node = byId(id);
    if (node.textContent !== words) {
      node.textContent = words;
    }
  };

  const element = (name, words, attributes = {}) => {
    const node = document.createElement(name);
    node.textContent = words;
    for (const [key, value] of Object.entries(attributes)) {
      node.setAttribute(key, value);
    }
    return node;
  };

  const connection = (state, words) => {
    byId('connection').dataset.state = state;
    text('connection', words);
    for (const id of ['verdict-box', 'lanyard-box']) {
      byId(id).toggleAttribute('data-old', state !== 'live');
    }
  };

  const lost = () => {
    const since = lastEvent === 0 ? '' : ' since ' + new Date(lastEvent).toTimeString().slice(0, 5);
    connection('lost', 'No connection' + since + '. What is shown is old: ask the climber.');
  };

  // ---- the picture ----

  const degrees = (group, view) => {
    const elevation = Number(group.dataset.elevationDeg) * Math.PI / 180;
    const bearing = Number(group.dataset.bearingDeg) * Math.PI / 180;
    return view === 'plan'
      ? -bearing * 180 / Math.PI
      : -Math.atan2(Math.sin(elevation), Math.cos(elevation) * Math.cos(bearing)) * 180 / Math.PI;
  };

  // From where the arrow pointed before to where it points now, the short way round.
  const turn = (before, now) => {
    for (const view of ['side', 'plan']) {
      const from = before && before.querySelector('.load.' + view);
      const to = now.querySelector('.load.' + view);
      const shaft = to && to.querySelector('line');
      // End on, it points nowhere on the sheet.
      const endOn = [from, to].some((each) => each && each.querySelector('circle'));
      if (!from || !shaft || endOn || calm.matches) {
        continue;
      }
      const delta = Math.round(degrees(from, view) - degrees(to, view) + 540) % 360 - 180;
      to.style.transformOrigin = shaft.getAttribute('x1') + 'px ' + shaft.getAttribute('y1') + 'px';
      to.animate([{transform: 'rotate(' + delta + 'deg)'}, {transform: 'none'}], TURN_MS);
    }
  };

  const picture = (id, svg) => {
    const frame = byId(id);
    if (frame.dataset.drawn === svg) {
      return;
    }
    frame.dataset.drawn = svg;
    const before = frame.querySelector('svg');
    if (svg === '') {
      frame.replaceChildren();
      return;
    }
    const drawn = document.importNode(
      new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true);
    frame.replaceChildren(drawn);
    turn(before, drawn);
  };

  // ---- the board ----

  const row = (each) => {
    const line = element('tr', '', {role: 'row', 'data-state': each.state});
    line.append(
      element('th', each.name, {role: 'rowheader', scope: 'row'}),
      element('td', each.plan, {role: 'cell', 'data-label': 'Plan: '}),
      element('td', each.said, {role: 'cell', 'data-label': 'Said: '}),
      element('td', each.so, {role: 'cell', 'data-label': ''}));
    return line;
  };

  const answers = (all) => all.map((each) => element('p', each.text, each.danger ? {'class': 'danger'} : {}));

  const entry = (each) => {
    const item = element('li', '');
    item.append(element('time', each.at), ' ', element('q', each.said === '' ? '-' : each.said));
    item.append(...answers(each.answers));
    return item;
  };

  const show = (board) => {
    text('plan-name', board.plan);
    document.title = board.verdict.word + ', ' + board.title;
    byId('verdict-box').dataset.outcome = board.verdict.outcome;
    text('verdict-word', board.verdict.word);
    text('verdict-head', board.verdict.head);
    text('verdict-reason', board.verdict.reason);
    byId('lanyard-box').dataset.state = board.lanyard.state;
    text('lanyard-word', board.lanyard.word);
    text('lanyard-more', board.lanyard.more);
    text('now-title', 'The rig as said: ' + board.title);
    text('load', board.load);
    picture('picture', board.picture);
    text('plan-title', 'The plan: ' + board.title);
    text('planned-load', board.planned_load);
    picture('planned', board.planned_picture);
    text('tally', board.tally);
    byId('rows').replaceChildren(...board.rows.map(row));
    const latest = board.journal[board.journal.length - 1];
    if (latest) {
      text('heard', latest.said === '' ? '-' : latest.said);
      byId('answered').replaceChildren(...answers(latest.answers));
    }
    byId('entries').replaceChildren(...board.journal.map(entry).reverse());
    byId('type').hidden = !board.may_type;
    for (const each of document.getElementsByName('units')) {
      each.checked = each.value === board.units;
    }
    document.body.dataset.shown = board.version;
    document.body.dataset.reactedMs = Date.now() - board.heard_at_ms;
  };

  // ---- the stream ----

  const alive = () => {
    lastEvent = Date.now();
    connection('live', 'Live.');
  };

  const open = () => {
    if (source) {
      source.close();
    }
    source = new EventSource('events' + (units ? '?units=' + units : ''));
    source.addEventListener('board', (event) => {
      show(JSON.parse(event.data));
      alive();
    });
    source.addEventListener('alive', alive);
    source.onerror = () => {
      lost();
      // A browser gives up on some answers; this page never does.
      if (source.readyState === EventSource.CLOSED) {
        setTimeout(open, 1000);
      }
    };
  };

  setInterval(() => {
    if (lastEvent > 0 && Date.now() - lastEvent > SILENT_MS) {
      lost();
    }
  }, 1000);

  byId('units').addEventListener('change', (event) => {
    units = event.target.value;
    open();
  });

  byId('type').addEventListener('submit', async (event) => {
    event.preventDefault();
    const words = byId('words').value.trim();
    if (words === '') {
      return;
    }
    try {
      const answer = await fetch('say', {method: 'POST', body: words, headers: {'Content-Type': 'text/plain; charset=utf-8'}});
      text('typed', answer.ok ? 'Said: ' + words : await answer.text());
      if (answer.ok) {
        byId('words').value = '';
      }
    } catch (none) {
      text('typed', 'Not said: no connection.');
    }
  });

  open();
})();
