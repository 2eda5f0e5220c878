import { useEffect } from 'react';

/** An element and its place among its siblings while it was there. */
interface Step {
  element: Element;
  at: number;
}

const controls =
  ':is(a[href], button, input, select, textarea, summary, [tabindex="0"]):not(:disabled, [tabindex="-1"])';

/**
 * A button that takes itself away when it is pressed by a key (×, 'Take off the list', 'Close') hands its focus
 * on: to the same button of the line that moves up, else to what stands next. Browsers drop it, and nobody sees where
 * they are. What a page focuses by itself goes before; a pointer needs nothing, and on a phone a field in focus
 * would bring up its keyboard.
 */
export function useFocusKept(): void {
  useEffect(() => {
    let pressed: Step[] = [];
    const changed = new MutationObserver(() => {
      if (pressed[0]?.element.isConnected) return;
      const next = document.activeElement === document.body ? nextTo(pressed) : undefined;
      forget();
      next?.focus();
    });
    const forget = () => {
      changed.disconnect();
      pressed = [];
    };
    const onClick = (event: MouseEvent) => {
      forget();
      const button = event.detail === 0 ? (event.target as Element).closest('button') : null;
      if (button === null) return;
      pressed = stepsOf(button);
      changed.observe(document.body, { childList: true, subtree: true });
    };
    document.addEventListener('click', onClick, true);
    document.addEventListener('focusin', forget);
    return () => {
      forget();
      document.removeEventListener('click', onClick, true);
      document.removeEventListener('focusin', forget);
    };
  }, []);
}

/** From the button out to the page. */
function stepsOf(button: Element): Step[] {
  const steps: Step[] = [];
  for (let element: Element | null = button; element?.parentElement; element = element.parentElement)
    steps.push({ element, at: [...element.parentElement.children].indexOf(element) });
  return steps;
}

/** What stands after the place of what is gone, or before it; where there is nothing, the same one level further out. */
function nextTo(steps: readonly Step[]): HTMLElement | undefined {
  const gone = steps.findLastIndex(({ element }) => !element.isConnected);
  for (let level = gone; level + 1 < steps.length; level++) {
    const around = [...steps[level + 1]!.element.children];
    const { at } = steps[level]!;
    for (const sibling of [...around.slice(at), ...around.slice(0, at).toReversed()]) {
      const found = controlIn(sibling, level === gone ? steps[0]!.element : null);
      if (found) return found;
    }
  }
  return undefined;
}

function controlIn(place: Element, like: Element | null): HTMLElement | undefined {
  const all = [place, ...place.querySelectorAll(controls)].filter(
    (one): one is HTMLElement => one instanceof HTMLElement && one.matches(controls) && one.checkVisibility(),
  );
  return all.find((one) => one.tagName === like?.tagName && one.className === like.className) ?? all[0];
}
