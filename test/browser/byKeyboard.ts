import type { Page } from 'playwright-core';

/** More stops than any page has. */
const mostPresses = 500;

/** What a screen reader would call the focused control, roughly: its label, else its text. */
export function focusedName(page: Page): Promise<string> {
  return page.evaluate<string>(`(() => {
    const { activeElement: element } = document;
    return (element.getAttribute('aria-label') ?? element.labels?.[0]?.textContent ?? element.textContent ?? '').trim();
  })()`);
}

/** Presses Tab until the control of that name has focus, as a person would. Fails where no Tab leads there. */
export async function tabTo(page: Page, name: RegExp): Promise<void> {
  const passed: string[] = [];
  for (let presses = 0; presses < mostPresses; presses++) {
    await page.keyboard.press('Tab');
    const focused = (await focusedName(page)).slice(0, 80);
    if (name.test(focused)) return;
    passed.push(focused);
  }
  throw new Error(`No Tab leads to ${name}; passed ${[...new Set(passed)].join(' | ')}`);
}

/** Goes to a control and presses Enter on it. */
export async function enterOn(page: Page, name: RegExp): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Enter');
}

/** Goes to a field, replaces what is in it. */
export async function typeInto(page: Page, name: RegExp, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
}
