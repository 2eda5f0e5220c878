import { join } from 'node:path';
import { candidateColumns } from '@tiegel/search';
import { openTokens, type Tokens } from '@tiegel/search/laboratory';
import { joinStore } from '@tiegel/store';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { seriousFindings } from './axeOf.ts';
import { focusedName } from './byKeyboard.ts';
import { eventually, openSite, type Site, textOf } from './site.ts';

let site: Site;
let tokens: Tokens;
let close: () => void;
const tokenOf: Record<string, string> = {};
beforeAll(async () => {
  site = await openSite(
    (folder) => {
      const store = joinStore({ file: join(folder, 'tiegel.sqlite'), columns: candidateColumns });
      close = () => store.close();
      tokens = openTokens(store.tokens);
      for (const [name, role] of [
        ['Ana Berg', 'author'],
        ['Rea', 'reader'],
      ] as const)
        tokenOf[name] = tokens.give(name, role).token;
    },
    { tokens: true },
  );
});
afterAll(async () => {
  await site?.close();
  close?.();
});

async function signIn(path: string, name: string) {
  const visit = await site.visit(path);
  await visit.page.getByLabel('Token').fill(tokenOf[name]!);
  await visit.page.keyboard.press('Enter');
  await visit.page.locator('.head-holder').getByText(name).waitFor();
  return visit;
}

test('who has no token is asked for one in the place of the page, which follows once it is right', async () => {
  const { page, wrongs } = await site.visit('/shortlists');
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  expect(await page.title()).toBe('Sign in – Tiegel');
  expect(await seriousFindings(page)).toEqual([]);

  await page.getByLabel('Token').fill('tiegel_guessed');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.getByRole('alert').getByText('is not in force here').waitFor();

  await page.getByLabel('Token').fill(tokenOf['Ana Berg']!);
  await page.keyboard.press('Enter');
  await page.getByRole('heading', { name: 'Shortlists' }).waitFor();
  expect(await textOf(page.locator('.head-holder'))).toContain('Ana Berg (author)');

  await page.reload();
  await page.getByRole('heading', { name: 'Shortlists' }).waitFor();
  expect(await page.evaluate('document.cookie')).toBe('');
  expect(wrongs).toEqual([]);
});

test('what is changed bears the name of the token, and nobody is asked for another', async () => {
  const { page, wrongs } = await signIn('/shortlists', 'Ana Berg');
  await page.getByText('Your name, Ana Berg, stands by what you change.').waitFor();
  expect(await page.getByLabel('Your name').count()).toBe(0);
  await page.getByLabel('What for').fill('Pumps');
  await page.getByRole('button', { name: /Begin/ }).click();
  await page.waitForURL(/\/shortlists\/\w+/);
  expect(wrongs).toEqual([]);
});

test('a reader is told what a reader may not do', async () => {
  const { page } = await signIn('/ask', 'Rea');
  await page.getByRole('button', { name: 'As the demonstration' }).click();
  await page.getByRole('button', { name: 'Start search' }).click();
  await page.getByText('Rea has the role "reader"').waitFor();
  await page.getByText('a token with the role "author"').waitFor();
});

test('a token that is withdrawn ends what is open, and signing out shows nothing more', async () => {
  const { token } = tokens.give('Guest', 'reader');
  tokenOf.Guest = token;
  const { page } = await signIn('/searches', 'Guest');
  await page.getByText('No search has been asked here yet.').waitFor();
  tokens.withdraw('Guest');
  await page.getByRole('link', { name: 'Melts' }).click();
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();

  const { page: other } = await signIn('/searches', 'Rea');
  await other.getByRole('button', { name: 'Sign out' }).click();
  await other.getByRole('heading', { name: 'Sign in' }).waitFor();
  expect(await other.locator('.head-holder').count()).toBe(0);
  await eventually(async () => (await other.context().cookies()).length).toBe(0);
});

test('whoever is signed out while they write signs in again at once, and finds what they wrote', async () => {
  const give = () => {
    tokenOf.Mia = tokens.give('Mia', 'author').token;
  };
  give();
  const { page, wrongs } = await signIn('/shortlists', 'Mia');
  await page.getByLabel('What for').fill('Valves');
  await page.getByRole('button', { name: /Begin/ }).click();
  await page.getByLabel('An alloy, at.%').fill('CoCrFeMnNi');
  await page.keyboard.press('Enter');
  await page.getByText('Added by Mia').waitFor();
  await page.getByLabel('Note').fill('Written down as the token ended');
  await page.getByRole('button', { name: 'Add it' }).waitFor();
  tokens.withdraw('Mia');
  await page.getByLabel('Note').press('Enter');
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  await eventually(() => focusedName(page)).toBe('Token');

  // What somebody else wrote here does not go out under one's own name.
  await page.keyboard.type(tokenOf['Ana Berg']!);
  await page.keyboard.press('Enter');
  await page.getByText('What Mia changed on this list is kept in this browser').waitFor();
  await page.getByText('Everything is sent.').waitFor({ state: 'attached' });
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.getByRole('heading', { name: 'Sign in' }).waitFor();
  await page.getByLabel('Token').focus();

  give();
  await page.keyboard.type(tokenOf.Mia!);
  await page.keyboard.press('Enter');
  await page.locator('.short-page').getByText('Written down as the token ended').waitFor();
  await page.getByText('What Mia changed').waitFor({ state: 'detached' });
  await page.getByText('Everything is sent.').waitFor({ state: 'attached' });
  await page.getByText(/Written down as the token ended/).waitFor();
  expect(await page.evaluate('document.activeElement.id')).toBe('main');
  expect(wrongs).toEqual([]);
});
