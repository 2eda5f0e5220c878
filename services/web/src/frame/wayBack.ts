import { useEffect, useState } from 'react';

/** The link by which a page was left, kept in its entry of the browser's history. */
interface Left {
  /** the address that the link leads to, as it stands in it */
  href: string;
  /** its row in a list of which only the rows in sight are drawn (data-row); null elsewhere */
  row: number | null;
}

const left = (): Left | null => (history.state as { left?: Left } | null)?.left ?? null;

/** So long is a link waited for that its page still fetches, ms. */
const longEnough = 10_000;

/** Notes in the history which link of a page is followed, for whoever comes back. */
export function noteLinks(): () => void {
  const onClick = (event: MouseEvent) => {
    if (event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) return;
    const link = (event.target as Element).closest('a[href]');
    if (!link) return;
    const { row } = (link as HTMLElement).dataset;
    const href = link.getAttribute('href')!;
    // What the head links to is left from the page as a whole.
    const noted = link.closest('main') ? { href, row: row === undefined ? null : Number(row) } : undefined;
    history.replaceState({ ...history.state, left: noted }, '');
  };
  document.addEventListener('click', onClick, true);
  return () => document.removeEventListener('click', onClick, true);
}

/**
 * Focuses the link by which this page was left and brings it into sight, as soon as it is there; whoever does
 * something meanwhile is left alone. Answers how to stop waiting, or null where the page was never left by a link.
 */
export function comeBack(page: HTMLElement): (() => void) | null {
  const href = left()?.href;
  if (href === undefined) return null;
  const acts = ['keydown', 'pointerdown', 'wheel', 'touchmove'];
  const stop = () => {
    changed.disconnect();
    clearTimeout(timer);
    for (const act of acts) window.removeEventListener(act, stop);
  };
  const look = () => {
    const link = page.querySelector<HTMLElement>(`a[href="${CSS.escape(href)}"]`);
    if (!link?.checkVisibility()) return;
    stop();
    link.focus({ preventScroll: true });
    link.scrollIntoView({ block: 'center' });
  };
  const changed = new MutationObserver(look);
  const timer = setTimeout(() => stop(), longEnough);
  for (const act of acts) window.addEventListener(act, stop);
  changed.observe(page, { childList: true, subtree: true });
  look();
  return stop;
}

/**
 * Brings the row of a list by which its page was left back into sight, where it is not drawn by itself.
 * @param rows how many are there; `onEnd` asks for more until the row is among them
 */
export function useLeftRow(rows: number, scrollTo: (row: number) => void, onEnd?: () => void): void {
  const [sought, setSought] = useState(() => left()?.row ?? null);
  useEffect(() => {
    if (sought === null) return;
    if (sought >= rows) return onEnd?.();
    setSought(null);
    scrollTo(sought);
  }, [sought, rows, scrollTo, onEnd]);
}
