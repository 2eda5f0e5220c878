import type { ComponentType } from 'react';
import { alloyKeys } from '../alloy/alloyKeys.ts';
import { dataKeys } from '../data/dataKeys.ts';
import type { Key } from '../frame/KeysDialog.tsx';
import { AskPage, askKeys } from './AskPage.tsx';
import { lazyPage } from './lazyPage.ts';
import { SearchesPage } from './SearchesPage.tsx';
import { SearchPage, searchKeys } from './SearchPage.tsx';

const AlloyPage = lazyPage(async () => (await import('./AlloyPage.tsx')).AlloyPage);
const AlloysPage = lazyPage(async () => (await import('./AlloysPage.tsx')).AlloysPage);
const ComparePage = lazyPage(async () => (await import('./ComparePage.tsx')).ComparePage);
const DataPage = lazyPage(async () => (await import('./DataPage.tsx')).DataPage);
const EvidencePage = lazyPage(async () => (await import('./EvidencePage.tsx')).EvidencePage);
const CandidatePage = lazyPage(async () => (await import('./CandidatePage.tsx')).CandidatePage);
const ChargePage = lazyPage(async () => (await import('./ChargePage.tsx')).ChargePage);
const ChargeSheetPage = lazyPage(async () => (await import('./ChargeSheetPage.tsx')).ChargeSheetPage);
const ChargeSheetsPage = lazyPage(async () => (await import('./ChargeSheetsPage.tsx')).ChargeSheetsPage);
const MeltsPage = lazyPage(async () => (await import('./MeltsPage.tsx')).MeltsPage);
const NewMeltPage = lazyPage(async () => (await import('./NewMeltPage.tsx')).NewMeltPage);
const MeltPage = lazyPage(async () => (await import('./MeltPage.tsx')).MeltPage);
const ShortlistPage = lazyPage(async () => (await import('./ShortlistPage.tsx')).ShortlistPage);
const ShortlistsPage = lazyPage(async () => (await import('./ShortlistsPage.tsx')).ShortlistsPage);

/** The parts of the site that the head links to. */
export const sections = [
  { name: 'Ask', to: '/ask' },
  { name: 'Searches', to: '/searches' },
  { name: 'Alloys', to: '/alloys' },
  { name: 'Shortlists', to: '/shortlists' },
  { name: 'Charge', to: '/charge-sheets' },
  { name: 'Melts', to: '/melts' },
  { name: 'Evidence', to: '/evidence' },
  { name: 'Data', to: '/data' },
] as const;

/** One page: its address, what shows there, the part of the site that it belongs to, its own keys. */
export interface Page {
  path: string;
  component: ComponentType;
  section: (typeof sections)[number]['name'];
  keys: readonly Key[];
}

/** Every page of the site; a new one is a line here and a file beside this one. */
export const pages: readonly Page[] = [
  { path: '/', component: AskPage, section: 'Ask', keys: askKeys },
  { path: '/ask', component: AskPage, section: 'Ask', keys: askKeys },
  { path: '/searches', component: SearchesPage, section: 'Searches', keys: [] },
  { path: '/searches/:id', component: SearchPage, section: 'Searches', keys: searchKeys },
  {
    path: '/searches/:id/candidates/:composition',
    component: CandidatePage,
    section: 'Searches',
    keys: alloyKeys,
  },
  { path: '/alloys', component: AlloysPage, section: 'Alloys', keys: [] },
  { path: '/alloys/:composition', component: AlloyPage, section: 'Alloys', keys: alloyKeys },
  { path: '/compare', component: ComparePage, section: 'Alloys', keys: [] },
  { path: '/evidence', component: EvidencePage, section: 'Evidence', keys: [] },
  { path: '/data/*?', component: DataPage, section: 'Data', keys: dataKeys },
  { path: '/charge', component: ChargePage, section: 'Charge', keys: [] },
  { path: '/charge-sheets', component: ChargeSheetsPage, section: 'Charge', keys: [] },
  { path: '/charge-sheets/:number', component: ChargeSheetPage, section: 'Charge', keys: [] },
  { path: '/melts', component: MeltsPage, section: 'Melts', keys: [] },
  { path: '/melts/new', component: NewMeltPage, section: 'Melts', keys: [] },
  { path: '/melts/:id', component: MeltPage, section: 'Melts', keys: [] },
  { path: '/shortlists', component: ShortlistsPage, section: 'Shortlists', keys: [] },
  { path: '/shortlists/:id', component: ShortlistPage, section: 'Shortlists', keys: [] },
];
