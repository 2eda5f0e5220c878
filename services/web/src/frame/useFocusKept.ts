import { useEffect } from 'react';

const controls =
  ':is(a[href], button, input, select, textarea, summary, [tabindex="0"]):not(:disabled, [tabindex="-1"])';

/**
 * A button pressed by a key that rests until its answer comes (disabled) gets the focus back; one that goes away
 * (×, 'Take off the list', 'Close') hands it on: to the same button of the line that moves up, else to what stands
 * next. Browsers drop it, and nobody sees where they are. What a page focuses by itself goes before; a pointer needs
 * nothing, and on a phone a field in focus would bring up its keyboard.
 */
export function useFocusKept(): void {
  useEffect(() => {
    let pressed: HTMLButtonElement | null = null;
    // Where it stands; the browser keeps the place when what stood there is gone.
    const place = document.createRange();
    const changed = new MutationObserver(() => {
      const { activeElement } = document;
      if (pressed === null || (activeElement !== document.body && activeElement !== pressed)) return;
      if (pressed.isConnected && pressed.disabled) return;
      if (pressed.checkVisibility()) return pressed.focus({ preventScroll: true });
      const next = nextTo(place, pressed);
      forget();
      next?.focus();
    });
    const hold = (button: HTMLButtonElement) => {
      pressed = button;
      place.selectNode(button);
      changed.observe(document.body, {
        ...{ childList: true, subtree: true },
        attributeFilter: ['disabled', 'open'],
      });
    };
    const forget = () => {
      changed.disconnect();
      pressed = null;
    };
    const onClick = (event: MouseEvent) => {
      forget();
      const button = event.detail === 0 ? (event.target as Element).closest('button') : null;
      if (button !== null) hold(button);
    };
    const onFocus = ({ target }: FocusEvent) => {
      // A dialog that was closed gives the focus to the button that opened it, which may go or rest in its stead.
      const closed = pressed?.closest('dialog:not([open])') != null;
      forget();
      if (closed && target instanceof HTMLButtonElement) hold(target);
    };
    document.addEventListener('click', onClick, true);
    document.addEventListener('focusin', onFocus);
    return () => {
      forget();
      document.removeEventListener('click', onClick, true);
      document.removeEventListener('focusin', onFocus);
    };
  }, []);
}

/** What stands after a place, or before it; where there is nothing, the same one level further out. */
function nextTo(place: Range, gone: Element): HTMLElement | undefined {
  const within = place.commonAncestorContainer;
  for (let around: Node | null = within; around instanceof Element; around = around.parentElement) {
    const all = [...around.querySelectorAll<HTMLElement>(controls)].filter((one) => one.checkVisibility());
    const before = all.filter((one) => place.comparePoint(one, 0) < 0);
    const next = all.find((one) => place.comparePoint(one, 0) > 0) ?? before.at(-1);
    if (next === undefined) continue;
    const line = [...around.children].find((child) => child.contains(next));
    return (around === within ? likeIn(all, line, gone) : undefined) ?? next;
  }
  return undefined;
}

/** The control of a line that is the one that is gone in its own: with the same words on it, else of the same looks. */
function likeIn(all: readonly HTMLElement[], line: Element | undefined, gone: Element) {
  const alike = all.filter((one) => line?.contains(one) && one.className === gone.className);
  return alike.find(({ textContent }) => textContent === gone.textContent) ?? alike[0];
}
