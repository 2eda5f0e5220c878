import type { ProblemKind } from '../problemKind.ts';

/** Charge sheets, melts and their files, shortlists. */
export const laboratoryProblems = {
  'charge/not-in-alloy': {
    status: 400,
    exit: 1,
    text: ({ what, symbol }: { what: string; symbol: string }) =>
      `A ${what} of ${symbol} is given, but the alloy has no ${symbol}.`,
    remedy: 'Name only elements of the alloy.',
  },
  'charge/two-purities': {
    status: 400,
    exit: 1,
    text: () => 'Purities are given beside a list of materials, which has its own.',
    remedy: 'Write the purity of each material in the list, or leave the list out.',
  },
  'charge/not-found': {
    status: 404,
    exit: 1,
    text: ({ number }: { number: string }) => `There is no charge sheet with the number ${number}.`,
    remedy:
      'Their numbers look like C-0007; the page Charge, "charge-sheets list" and GET /api/v1/charge-sheets list those that were saved.',
  },
  'charge/cannot-be-met': {
    status: 400,
    exit: 1,
    text: ({ symbol, share, why }: { symbol: string; share: string; why: string; right: string }) =>
      `The materials cannot give the ${share} of ${symbol}: ${why}.`,
    remedy: ({ right }: { symbol: string; share: string; why: string; right: string }) => right,
  },
  'charge/too-light': {
    status: 400,
    exit: 1,
    text: ({
      material,
      needed,
      resolution,
    }: {
      material: string;
      needed: string;
      resolution: number;
      least: string;
    }) =>
      `The batch needs ${needed} g of ${material}, which a balance with steps of ${resolution} g cannot show.`,
    remedy: ({ material, least }: { material: string; needed: string; resolution: number; least: string }) =>
      `Charge at least ${least} g for one step of ${material}, weigh on a finer balance, or bring it in by a master alloy.`,
  },
  'shortlist/unknown': {
    status: 404,
    exit: 1,
    text: ({ id }: { id: string }) => `There is no shortlist with the id ${id}.`,
    remedy: 'The page Shortlists, "shortlist list" and GET /api/v1/shortlists list those that there are.',
  },
  'shortlist/no-entry': {
    status: 400,
    exit: 1,
    text: ({ entry }: { entry: string }) => `The shortlist has no entry ${entry}.`,
    remedy: 'Add it first, with "shortlist add" or a change of the kind "add".',
  },
  'shortlist/no-conflict': {
    status: 409,
    exit: 1,
    text: ({ entry }: { entry: string }) =>
      `There is no open conflict on ${entry}: nobody contradicts anybody.`,
    remedy: '"shortlist conflicts" lists those that are open; "shortlist status" says how far an alloy is.',
  },
  'melt/not-found': {
    status: 404,
    exit: 1,
    text: ({ id }: { id: string }) => `There is no melt with the id ${id}.`,
    remedy: 'The page Melts, "melt list" and GET /api/v1/melts list those that were recorded.',
  },
  'melt/changed-meanwhile': {
    status: 409,
    exit: 1,
    text: ({ version, current }: { version: number; current: number }) =>
      `The melt was changed since: you have version ${version}, the newest is ${current}.`,
    remedy: 'Read it again, see what was changed, and change the newest version.',
  },
  'melt/phase-twice': {
    status: 400,
    exit: 1,
    text: ({ phase }: { phase: string }) => `The phase ${phase} is named twice.`,
    remedy: 'Name each phase once.',
  },
  'melt/method-missing': {
    status: 400,
    exit: 1,
    text: () => 'Phases are named, but not how they were observed.',
    remedy: 'Name at least one method, or leave the phases out until somebody has looked.',
  },
  'melt/weighed-twice': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" was weighed twice.`,
    remedy: 'Add the two masses up, or give the second lot a name of its own.',
  },
  'attachment/type': {
    status: 415,
    exit: 1,
    text: ({ name }: { name: string }) =>
      `"${name}" is none of the files that are kept here, by what is in it.`,
    remedy: 'Attach a PNG, JPEG, WebP or TIFF picture, a PDF, or a text file of a measurement.',
  },
  'attachment/name': {
    status: 400,
    exit: 1,
    text: () => 'The file has no name, or one that cannot be shown.',
    remedy: 'Name it in at most 120 characters on one line, without slashes.',
  },
  'attachment/too-many': {
    status: 409,
    exit: 1,
    text: ({ limit }: { limit: number }) => `The melt has ${limit} attachments already.`,
    remedy: 'Remove one that is not needed.',
  },
  'attachment/not-found': {
    status: 404,
    exit: 1,
    text: ({ id }: { id: string }) => `There is no attachment with the id ${id}.`,
    remedy: 'Its page, "melt show ID --json" and GET /api/v1/melts/ID list the attachments of a melt.',
  },
} satisfies Record<string, ProblemKind>;
