/**
 * What a page does beyond its links: shows one size, copies the questions, opens what is folded when a link leads into it,
 * unfolds for the printer. Everything can be read without it.
 */
export const script = `'use strict';
(() => {
  const all = (selector, root = document) => Array.from(root.querySelectorAll(selector));

  // A link may lead into something folded or filtered away.
  const reveal = () => {
    const id = decodeURIComponent(location.hash.slice(1));
    const target = id === '' ? null : document.getElementById(id);
    if (!target) return;
    for (let at = target; at; at = at.parentElement) {
      if (at.tagName === 'DETAILS') at.open = true;
      if (at.hidden && at.dataset.size !== undefined) choose(at.closest('[data-draft]'), at.dataset.size);
      else if (at.hidden) at.dispatchEvent(new Event('reveal'));
      if (at.classList.contains('view-gauge') && target.closest('.squares')) all('.views input[value=squares]', at).forEach((input) => input.click());
      if (at.classList.contains('view-checkpoints')) all('.views input[value=all]', at).forEach((input) => input.click());
    }
    target.scrollIntoView({ block: 'center', inline: 'nearest' });
    if (target.tabIndex < 0 && !target.closest('svg')) target.setAttribute('tabindex', '-1');
    if (!target.closest('svg')) target.focus({ preventScroll: true });
  };
  addEventListener('hashchange', reveal);

  // One size: findings that hold for it, its plan.
  const choose = (draft, size) => {
    if (!draft) return;
    for (const input of all('input[name$=-size]', draft)) input.checked = input.value === size;
    let shown = 0;
    const findings = all('.finding', draft);
    for (const finding of findings) {
      const sizes = finding.dataset.sizes === '' ? null : finding.dataset.sizes.split(' ');
      finding.hidden = size !== 'all' && sizes !== null && !sizes.includes(size);
      if (!finding.hidden) shown += 1;
    }
    for (const cell of all('[data-s]', draft)) cell.hidden = size !== 'all' && cell.dataset.s !== size;
    const plans = all('.size-plan', draft);
    for (const plan of plans) plan.hidden = size === 'all' ? plan !== plans[0] : plan.dataset.size !== size;
    const says = draft.querySelector('.filter output');
    if (says && findings.length > 0) says.textContent = size === 'all' ? '' : shown + ' of ' + findings.length + ' findings hold for this size.';
  };
  for (const draft of all('[data-draft]')) {
    const filter = draft.querySelector('.filter');
    if (!filter) continue;
    filter.hidden = false;
    filter.addEventListener('change', (event) => choose(draft, event.target.value));
    choose(draft, 'all');
  }

  // Views of a sheet: all rows or checkpoints only; squares or the proportion of the gauge.
  for (const views of all('.views')) {
    views.hidden = false;
    const root = views.parentElement;
    const apply = () => {
      for (const input of all('input', views)) root.classList.toggle('view-' + input.value, input.checked);
    };
    views.addEventListener('change', apply);
    apply();
  }

  // Plain stretches of a sheet are folded to one line.
  for (const button of all('button[data-folds]')) {
    const rows = document.getElementById(button.dataset.folds);
    const show = (open) => {
      rows.hidden = !open;
      button.setAttribute('aria-expanded', String(open));
    };
    button.hidden = false;
    button.addEventListener('click', () => show(rows.hidden));
    show(false);
    rows.addEventListener('reveal', () => show(true));
  }

  for (const button of all('button[data-copy]')) {
    button.hidden = false;
    button.addEventListener('click', async () => {
      const text = document.getElementById(button.dataset.copy);
      const says = button.nextElementSibling;
      try {
        await navigator.clipboard.writeText(text.textContent);
        says.textContent = 'Copied.';
      } catch {
        const range = document.createRange();
        range.selectNodeContents(text);
        const selection = getSelection();
        selection.removeAllRanges();
        selection.addRange(range);
        text.focus();
        says.textContent = 'Selected; copy it with your keyboard.';
      }
    });
  }
  for (const button of all('button[data-print]')) {
    button.hidden = false;
    button.addEventListener('click', () => print());
  }

  let opened = [];
  addEventListener('beforeprint', () => {
    opened = all('details[data-print]').filter((each) => !each.open);
    for (const each of opened) each.open = true;
  });
  addEventListener('afterprint', () => {
    for (const each of opened) each.open = false;
  });
  if (location.hash !== '') reveal();
})();
`;
