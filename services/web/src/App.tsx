import { useQuery } from '@tanstack/react-query';
import { Suspense, useEffect, useRef, useState } from 'react';
import { Link, matchRoute, Route, Switch, useLocation, useRouter } from 'wouter';
import { SignedIn } from './access/SignedIn.tsx';
import { SignIn } from './access/SignIn.tsx';
import { Banners } from './frame/Banners.tsx';
import { accessQuery } from './server/queries.ts';
import './frame/frame.css';
import { Guard } from './frame/Guard.tsx';
import { KeysDialog } from './frame/KeysDialog.tsx';
import { useFocusKept } from './frame/useFocusKept.ts';
import { useVisit } from './frame/useVisit.ts';
import { Waiting } from './frame/Waiting.tsx';
import { comeBack, noteLinks } from './frame/wayBack.ts';
import { pages, sections } from './pages/pages.ts';
import { UnknownPage } from './pages/UnknownPage.tsx';
import { EndMessages } from './watch/EndMessages.tsx';

/** Head, warnings, the page that the address names, and its keys. */
export function App() {
  const [location] = useLocation();
  const [keysOpen, setKeysOpen] = useState(false);
  const main = useRef<HTMLElement>(null);
  const { parser } = useRouter();
  const page = pages.find(({ path }) => matchRoute(parser, path, location)[0]);
  const visit = useVisit(location, page);
  const { data: access } = useQuery(accessQuery);
  const isRefused = access?.asked === true && access.role === null;
  // The form that asks who is here stands in the place of a page, and sees to the focus by itself.
  const shown = isRefused ? null : visit;
  const seen = useRef(shown);
  useFocusKept();

  useEffect(() => noteLinks(), []);

  useEffect(() => {
    // The very first page leaves focus to the browser.
    if (seen.current === shown || !main.current) return;
    seen.current = shown;
    if (shown === null) return;
    // A new page is read from its beginning, one that was come back to from where it was left.
    main.current.focus({ preventScroll: true });
    const stop = comeBack(main.current);
    if (stop === null) window.scrollTo(0, 0);
    return stop ?? undefined;
  }, [shown]);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const typing = (event.target as HTMLElement).matches(
        'input:not([type="radio"], [type="checkbox"]), textarea',
      );
      if (event.key === '?' && !typing) setKeysOpen(true);
    };
    document.addEventListener('keydown', onKey);
    return () => document.removeEventListener('keydown', onKey);
  }, []);

  return (
    <>
      <a href="#main" className="skip">
        Skip to the content
      </a>
      <header className="head">
        <Link href="/" className="head-name" aria-label="Tiegel, to the first page">
          <img src="/crucible.svg" alt="" width="22" height="22" /> Tiegel
        </Link>
        <nav aria-label="Pages">
          {sections.map(({ name, to }) => (
            <Link
              key={name}
              href={to}
              className="head-link"
              aria-current={page?.section === name ? 'page' : undefined}
            >
              {name}
            </Link>
          ))}
        </nav>
        <SignedIn />
        <button type="button" className="button-plain head-keys" onClick={() => setKeysOpen(true)}>
          Keys <kbd>?</kbd>
        </button>
      </header>
      <Banners />
      {isRefused ? null : <EndMessages />}
      <main id="main" ref={main} tabIndex={-1}>
        {isRefused ? (
          <SignIn />
        ) : (
          <Guard key={visit}>
            <Suspense fallback={<Waiting what="Fetching the page" />}>
              <Switch>
                {pages.map(({ path, component }) => (
                  <Route key={path} path={path} component={component} />
                ))}
                <Route component={UnknownPage} />
              </Switch>
            </Suspense>
          </Guard>
        )}
      </main>
      <KeysDialog keys={page?.keys ?? []} open={keysOpen} onClose={() => setKeysOpen(false)} />
    </>
  );
}
