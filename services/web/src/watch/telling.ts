/** Whether this browser can tell of something while its tab is out of sight, and may. */
export type Telling = 'impossible' | 'not asked' | 'allowed' | 'refused';

export function telling(): Telling {
  if (!('Notification' in globalThis)) return 'impossible';
  const { permission } = Notification;
  return permission === 'granted' ? 'allowed' : permission === 'denied' ? 'refused' : 'not asked';
}

/** Tells by the browser's notification, where that is allowed and the tab is out of sight; `tag` keeps one from coming twice. */
export function notify(title: string, body: string, tag: string): void {
  if (document.visibilityState !== 'hidden' || telling() !== 'allowed') return;
  try {
    const message = new Notification(title, { body, tag });
    message.onclick = () => window.focus();
  } catch {
    // Some browsers of phones allow notifications to service workers alone; the page itself tells it.
  }
}
