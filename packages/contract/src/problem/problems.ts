import { type Role, roleInWords } from '../access/roles.ts';
import { inDigits } from '../inDigits.ts';

/** How one kind of error answers: HTTP status, exit code of the terminal (1 the request was wrong, 2 a fault), text, remedy. */
export interface ProblemKind {
  status: number;
  exit: 1 | 2;
  text: (values: never) => string;
  remedy: string | ((values: never) => string);
}

interface Found {
  place: string;
  found: string;
  right: string;
}

interface Length {
  size: number;
  of: string;
  word: string;
  bound: number;
}

/** How a sentence ends that names a near miss: `meant` is '' where nothing is near. */
function orMeant(meant: string): string {
  return meant === '' ? '.' : `: did you mean "${meant}"?`;
}

/** How a sentence begins that tells of a file which was read. */
function fileRead(file: string): string {
  return file === '-' ? 'Standard input' : `The file ${file}`;
}

/**
 * The one table of errors: terminal, HTTP and docs derive from it. Codes are area/what. A text
 * says what is wrong and a remedy what would be right, each a whole sentence.
 */
export const problems = {
  'access/foreign-host': {
    status: 403,
    exit: 1,
    text: ({ host }: { host: string }) => `The request names the host "${host}", which this server is not.`,
    remedy:
      'Open the address that the server printed at its start, under the name localhost or 127.0.0.1, or start it with the name in HOST_NAMES.',
  },
  'access/foreign-page': {
    status: 403,
    exit: 1,
    text: ({ origin }: { origin: string }) => `A page of another site (${origin}) asked for a change here.`,
    remedy: 'Make the change from a page of this server, or from a program that sends no Origin header.',
  },
  'access/no-token': {
    status: 401,
    exit: 1,
    text: () => 'This server asks who you are, and no token was sent.',
    remedy:
      'Sign in on the page, send the header "Authorization: Bearer TOKEN", or set TIEGEL_TOKEN for the terminal; whoever keeps the server gives tokens out, by "access give".',
  },
  'access/unknown-token': {
    status: 401,
    exit: 1,
    text: () => 'The token that was sent is not in force here.',
    remedy: 'Send it whole, as it was given to you, or ask whoever keeps the server for another.',
  },
  'access/role': {
    status: 403,
    exit: 1,
    text: ({ name, role }: { name: string; role: Role; needed: Role }) =>
      `${name} has the role "${role}": they may ${roleInWords(role)}.`,
    remedy: ({ needed }: { name: string; role: Role; needed: Role }) =>
      `Ask whoever keeps the server for a token with the role "${needed}".`,
  },
  'access/nobody': {
    status: 500,
    exit: 1,
    text: () => 'TOKENS=yes, but nobody has a token, so that nobody could use this server.',
    remedy:
      'Give one out first, with the same DATA_DIR: npm run -s tiegel -- access give "Your name" --role keeper.',
  },
  'access/holder-name': {
    status: 400,
    exit: 1,
    text: () => 'This cannot be the name of somebody who holds a token.',
    remedy: ({ longest }: { longest: number }) =>
      `Write a name of 1 to ${longest} characters that can be seen.`,
  },
  'access/holder-known': {
    status: 409,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" has a token already.`,
    remedy: 'Take that one out of force first, by "access withdraw", or choose another name.',
  },
  'access/holder-unknown': {
    status: 404,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" has no token in force.`,
    remedy: 'Write a name as "access list" shows it.',
  },
  'configuration/invalid': {
    status: 500,
    exit: 1,
    text: ({ name, value }: { name: string; value: string; needed: string }) =>
      `The setting ${name} is "${value}", which is not possible.`,
    remedy: ({ name, needed }: { name: string; value: string; needed: string }) =>
      `Set ${name} to ${needed}, or leave it out for the default.`,
  },
  'configuration/missing': {
    status: 500,
    exit: 1,
    text: ({ name }: { name: string; needed: string }) => `The setting ${name} is missing.`,
    remedy: ({ name, needed }: { name: string; needed: string }) => `Set ${name} to ${needed}.`,
  },
  'configuration/open-network': {
    status: 500,
    exit: 1,
    text: ({ host }: { host: string }) =>
      `HOST is "${host}": other computers could reach this server, which asks nobody who they are.`,
    remedy:
      'Leave HOST out to serve this computer alone, set TOKENS=yes so that only holders of a token may use it, or OPEN_NETWORK=yes so that anyone who reaches it may.',
  },
  'alloy/unreadable': {
    status: 400,
    exit: 1,
    text: ({ alloy, place, found }: { alloy: string; place: number; found: string; right: string }) =>
      `"${alloy}" cannot be read at character ${place}: ${found}.`,
    remedy: ({ right }: { alloy: string; place: number; found: string; right: string }) =>
      right || 'Write element symbols with optional decimal amounts, for example Al7.69Co30.77Fe61.54.',
  },
  'alloy/too-long': {
    status: 400,
    exit: 1,
    text: ({ length, limit }: { length: number; limit: number }) =>
      `The alloy is written with ${length} characters; at most ${limit} are read.`,
    remedy: 'Write one alloy at a time, as in Al7.69Co30.77Fe61.54.',
  },
  'alloy/empty': {
    status: 400,
    exit: 1,
    text: () => 'The alloy has no elements.',
    remedy: 'Write element symbols with optional decimal amounts, for example Al7.69Co30.77Fe61.54.',
  },
  'alloy/repeated-element': {
    status: 400,
    exit: 1,
    text: ({ symbol, first, place }: { symbol: string; first: number; place: number }) =>
      `${symbol} stands in the alloy twice, at characters ${first} and ${place}.`,
    remedy: ({ symbol }: { symbol: string; first: number; place: number }) =>
      `Write ${symbol} once, with its whole amount.`,
  },
  'alloy/amount': {
    status: 400,
    exit: 1,
    text: ({ symbol, amount, where }: { symbol: string; amount: string; where: string }) =>
      `The amount of ${symbol}${where} is ${amount}, which is not possible.`,
    remedy: ({ symbol }: { symbol: string; amount: string; where: string }) =>
      `Give ${symbol} an amount above 0 (at least 1e-100) and at most 1e15, or leave it out.`,
  },
  'alloy/share-too-small': {
    status: 400,
    exit: 1,
    text: ({ symbol }: { symbol: string }) =>
      `The share of ${symbol} is below 0.0000000005 at.% and would be printed as 0.`,
    remedy: ({ symbol }: { symbol: string }) => `Leave ${symbol} out or give it a larger amount.`,
  },
  'element/unknown': {
    status: 400,
    exit: 1,
    text: ({ symbol, where }: { symbol: string; where: string; near: string }) =>
      `"${symbol}"${where} is not the symbol of an element.`,
    remedy: ({ near }: { symbol: string; where: string; near: string }) =>
      near === ''
        ? 'Write the symbol of an element, such as Fe.'
        : `Write the symbol of an element; the nearest known: ${near}.`,
  },
  'element/no-data': {
    status: 400,
    exit: 1,
    text: ({ symbol, name, where }: { symbol: string; name: string; where: string }) =>
      `There are no data of ${symbol}${where} (${name.toLowerCase()}).`,
    remedy: 'Use the elements that the page Data shows, and "data elements" and GET /api/v1/elements list.',
  },
  'quantity/unknown': {
    status: 400,
    exit: 1,
    text: ({ id, near }: { id: string; near?: string; known?: string }) =>
      `There is no quantity "${id}"${near === undefined ? '.' : `: did you mean "${near}"?`}`,
    remedy: ({ known }: { id: string; near?: string; known?: string }) =>
      known === undefined
        ? 'Use an id that "screen CoNi --json" and GET /api/v1/quantities list.'
        : `Use one of these: ${known}.`,
  },
  'quantity/late': {
    status: 400,
    exit: 1,
    text: ({ id }: { id: string }) =>
      `"${id}" is worked out for kept candidates only: it can neither limit nor rank every point of a grid.`,
    remedy: ({ id }: { id: string }) =>
      `Write it under "keptOnly", for example "keptOnly": [{"quantity": "${id}", "max": 1}].`,
  },
  'prices/too-large': {
    status: 413,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The price list has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'A price list has one row for each element: leave everything else out.',
  },
  'prices/unreadable': {
    status: 400,
    exit: 1,
    text: ({ line, what }: { line: number; what: string }) =>
      `The price list cannot be read at line ${line}: ${what}.`,
    remedy:
      'Separate fields with commas, or with semicolons or tabs throughout; put a field that holds such a sign or a quote in double quotes and double the quotes in it.',
  },
  'prices/empty': {
    status: 400,
    exit: 1,
    text: () => 'The price list has no rows.',
    remedy:
      'Write the header symbol,pricePerKilogram,currency,date,source and below it a row for each element.',
  },
  'prices/missing-column': {
    status: 400,
    exit: 1,
    text: ({ column, meant }: { column: string; meant: string }) =>
      `The price list has no column "${column}"${meant === '' ? '.' : `; did you mean it by "${meant}"?`}`,
    remedy:
      'Begin with the header symbol,pricePerKilogram,currency,date,source, separated by commas, semicolons or tabs.',
  },
  'prices/repeated-column': {
    status: 400,
    exit: 1,
    text: ({ column }: { column: string }) => `The price list has the column "${column}" twice.`,
    remedy: ({ column }: { column: string }) => `Keep one column "${column}".`,
  },
  'prices/row-length': {
    status: 400,
    exit: 1,
    text: ({ line, fields, columns }: { line: number; fields: number; columns: number }) =>
      `Line ${line} has ${fields} fields where the header has ${columns}.`,
    remedy: 'Write a field for each column; a decimal comma splits a number in two, so write 2.50, not 2,50.',
  },
  'prices/price': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The price on line ${line} is "${found}".`,
    remedy:
      'Write a number above 0 and at most 1e9, in digits with a decimal point, as in 2.50; leave out the row of an element whose price is unknown.',
  },
  'prices/decimal-comma': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) =>
      `The price on line ${line}, "${found}", has a comma in it.`,
    remedy: 'Write decimals with a point and thousands without a sign: 1234.50.',
  },
  'prices/repeated-element': {
    status: 400,
    exit: 1,
    text: ({ line, symbol, first }: { line: number; symbol: string; first: number }) =>
      `${symbol} has a price on line ${first} and another on line ${line}.`,
    remedy: ({ symbol }: { line: number; symbol: string; first: number }) => `Keep one row for ${symbol}.`,
  },
  'prices/currency': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The currency on line ${line} is "${found}".`,
    remedy: 'Write the three capital letters of ISO 4217, as in EUR.',
  },
  'prices/several-currencies': {
    status: 400,
    exit: 1,
    text: ({ line, found, first }: { line: number; found: string; first: string }) =>
      `The price on line ${line} is in ${found}, the list began in ${first}.`,
    remedy: ({ first }: { line: number; found: string; first: string }) =>
      `Convert every price to one currency, for example ${first}.`,
  },
  'prices/date': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The date on line ${line} is "${found}".`,
    remedy: 'Write a day of the calendar as year-month-day, as in 2026-11-25.',
  },
  'prices/source': {
    status: 400,
    exit: 1,
    text: ({ line }: { line: number }) => `The price on line ${line} has no source that can be shown.`,
    remedy: 'Say in at most 200 characters on one line where the price comes from.',
  },
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
  'schedule/unknown-zone': {
    status: 400,
    exit: 1,
    text: ({ zone }: { zone: string }) => `"${zone}" is no time zone that this computer knows.`,
    remedy: 'Use an IANA name such as "Europe/Berlin", "America/Chicago" or "UTC".',
  },
  'import/unknown': {
    status: 404,
    exit: 1,
    text: ({ number }: { number: string | number }) => `There is no import ${number}.`,
    remedy: 'The page Data, "data imports" and GET /api/v1/imports list them.',
  },
  'import/refused': {
    status: 422,
    exit: 1,
    text: ({ refused, rows }: { refused: number; rows: number }) =>
      refused === 0
        ? 'The file cannot be stored as it is, so nothing was.'
        : `${refused} of ${rows} rows cannot be stored, so nothing was.`,
    remedy: 'Mend what is said of each row, then send the whole file again.',
  },
  'import/too-large': {
    status: 413,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The file has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'Bring it in in several files.',
  },
  'import/unreadable': {
    status: 400,
    exit: 1,
    text: ({ line, what }: { line: number; what: string }) =>
      `The file cannot be read at line ${line}: ${what}.`,
    remedy:
      'Separate fields with commas, or with semicolons or tabs throughout, as many in each row as in the header; put a field that holds such a sign or a quote in double quotes and double the quotes in it.',
  },
  'import/empty': {
    status: 400,
    exit: 1,
    text: () => 'The file has no rows.',
    remedy: ({ header }: { header: string }) =>
      `Write the header ${header} and below it a line for each row.`,
  },
  'import/header': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string; header: string }) => `The header of the file is wrong: ${what}.`,
    remedy: ({ header }: { what: string; header: string }) =>
      `Begin with the header ${header}, separated by commas, semicolons or tabs.`,
  },
  'import/repeated': {
    status: 400,
    exit: 1,
    text: ({ what, line, first }: { what: string; line: number; first: number }) =>
      `${what} stands on line ${first} and again on line ${line}.`,
    remedy: 'Keep one of the rows.',
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
  'materials/too-large': {
    status: 413,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The list of materials has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'Leave out the materials that the alloy does not need.',
  },
  'materials/unreadable': {
    status: 400,
    exit: 1,
    text: ({ line, what }: { line: number; what: string }) =>
      `The list of materials cannot be read at line ${line}: ${what}.`,
    remedy:
      'Separate fields with commas, or with semicolons or tabs throughout, write decimals with a point, and put a field that holds a comma in double quotes.',
  },
  'materials/empty': {
    status: 400,
    exit: 1,
    text: () => 'The list of materials has no rows.',
    remedy:
      'Write the header material,contains,amounts,purity,price,currency and below it a row for each material.',
  },
  'materials/column': {
    status: 400,
    exit: 1,
    text: ({ what, meant }: { what: string; meant: string }) =>
      `The header of the list of materials is wrong: ${what}${orMeant(meant)}`,
    remedy: 'Use these columns, material always: material,contains,amounts,purity,price,currency,melting.',
  },
  'materials/name': {
    status: 400,
    exit: 1,
    text: ({ name, meant }: { name: string; meant: string; limit: number }) =>
      `The name of the material ${name} does not begin with the symbol of an element that is in it${orMeant(meant)}`,
    remedy: ({ limit }: { name: string; meant: string; limit: number }) =>
      `Begin with a symbol, as in "Mn flakes" or "FeNb66", in at most ${limit} characters on one line.`,
  },
  'materials/amounts': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) =>
      `It is not said what the amounts of the master alloy ${name} count.`,
    remedy: 'Write at.% or wt.% as amounts.',
  },
  'materials/repeated': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) => `Two materials have the name "${name}".`,
    remedy: 'Give each a name of its own, for example with its purity or its supplier.',
  },
  'materials/currency': {
    status: 400,
    exit: 1,
    text: ({ line, found, first }: { line: number; found: string; first: string }) =>
      `The price on line ${line} is in "${found}"${found === first ? '' : `, the list began in "${first}"`}.`,
    remedy: 'Give every price in one currency, in the three capital letters of ISO 4217, as in EUR.',
  },
  'request/invalid': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string; right?: string }) => (what.endsWith('?') ? what : `${what}.`),
    remedy: ({ right = 'See the description of the request in /api/v1/openapi.json.' }) => right,
  },
  'request/after-and-at': {
    status: 400,
    exit: 1,
    text: () => 'A page cannot both follow a key (after) and begin at a row (at).',
    remedy: 'Leave out one of the two.',
  },
  'request/content-type': {
    status: 415,
    exit: 1,
    text: ({ found }: { found: string; accepted: string }) => `The content type of the body is ${found}.`,
    remedy: ({ accepted }: { found: string; accepted: string }) => `Send the body as ${accepted}.`,
  },
  'request/malformed-json': {
    status: 400,
    exit: 1,
    text: ({ found }: { found: string }) => `The body is not JSON: ${found}.`,
    remedy:
      'Send one JSON value, with double quotes around names and texts and no comma at the end of a list.',
  },
  'request/key-twice': {
    status: 400,
    exit: 1,
    text: ({ key }: { key: string }) => `The key ${JSON.stringify(key)} stands twice in one object.`,
    remedy: 'Leave one of the two: each key has one value.',
  },
  'request/too-large': {
    status: 413,
    exit: 1,
    text: ({ limit }: { limit: number }) => `The body is larger than ${limit} bytes.`,
    remedy: 'Send less at once: several smaller requests, or a smaller file.',
  },
  'request/unknown-route': {
    status: 404,
    exit: 1,
    text: ({ method, path }: { method: string; path: string }) => `Nothing answers ${method} ${path}.`,
    remedy: 'Every address is described in /api/v1/openapi.json.',
  },
  'request/unreadable': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) => `The request cannot be read: ${what}.`,
    remedy:
      'Send a request that follows HTTP, with percent signs in the address encoded as %25 and text in UTF-8.',
  },
  'request/wrong-method': {
    status: 405,
    exit: 1,
    text: ({ method, path }: { method: string; path: string; allowed: string }) =>
      `${path} does not take ${method}.`,
    remedy: ({ allowed }: { method: string; path: string; allowed: string }) => `It takes ${allowed}.`,
  },
  'server/address-in-use': {
    status: 500,
    exit: 1,
    text: ({ host, port }: { host: string; port: number; other: number }) =>
      `Something already listens on ${host}, port ${port}; perhaps this server runs already.`,
    remedy: ({ other }: { host: string; port: number; other: number }) =>
      `Stop the other program, or choose another port, for example PORT=${other} npm start.`,
  },
  'server/cannot-listen': {
    status: 500,
    exit: 1,
    text: ({ host, port, why }: { host: string; port: number; why: string }) =>
      `The server cannot listen on ${host}, port ${port}: ${why}.`,
    remedy:
      'Set HOST and PORT to an address of this computer that you may use; a port from 1024 up needs no rights.',
  },
  'server/address': {
    status: 400,
    exit: 1,
    text: ({ address }: { address: string }) => `"${address}" is no address of a service.`,
    remedy: 'Write an address such as http://127.0.0.1:4270 behind --server or in TIEGEL_SERVER.',
  },
  'server/out-of-reach': {
    status: 503,
    exit: 2,
    text: ({ address, why }: { address: string; why: string }) =>
      `The service at ${address} is out of reach: ${why}.`,
    remedy: 'Start it with "npm start", or say with --server or TIEGEL_SERVER where it is.',
  },
  'server/other-answer': {
    status: 502,
    exit: 2,
    text: ({ address, status }: { address: string; status: number }) =>
      `What answers at ${address} (status ${status}) is not this service, or another release of it.`,
    remedy: 'Say with --server or TIEGEL_SERVER where the service is, and use the terminal of its release.',
  },
  'server/busy': {
    status: 503,
    exit: 2,
    text: ({ most, what }: { most: number; what: string }) =>
      `The server is busy with ${most} ${what}, which is as many as it takes at once.`,
    remedy: 'Ask again when one of them is done, or end one.',
  },
  'server/fault': {
    status: 500,
    exit: 2,
    text: ({ id }: { id: string }) => `Something failed in the server; its log has the cause under ${id}.`,
    remedy: 'Try again; if it fails again, report it with this number and the lines of the log around it.',
  },
  'server/stopping': {
    status: 503,
    exit: 2,
    text: () => 'The server is stopping and takes nothing new.',
    remedy: 'Try again when it has started anew; nothing that was accepted is lost.',
  },
  'request/unknown-key': {
    status: 400,
    exit: 1,
    text: ({ place, key, meant }: { place: string; key: string; meant: string; known: string }) =>
      `${place} has the unknown key "${key}"${orMeant(meant)}`,
    remedy: ({ key, known }: { place: string; key: string; meant: string; known: string }) =>
      known === '' ? `Leave "${key}" out: nothing is taken here.` : `Use only these keys: ${known}.`,
  },
  'request/missing-key': {
    status: 400,
    exit: 1,
    text: ({ place }: { place: string; right: string }) => `${place} is missing.`,
    remedy: ({ right }: { place: string; right: string }) => right,
  },
  'request/wrong-value': {
    status: 400,
    exit: 1,
    text: ({ place, found }: { place: string; found: string; right: string }) =>
      `${place} is ${found}, which is not possible here.`,
    remedy: ({ right }: { place: string; found: string; right: string }) => right,
  },
  'request/out-of-range': {
    status: 400,
    exit: 1,
    text: ({ place, found, word, bound }: Found & { word: string; bound: number }) =>
      `${place} is ${found}; it must be ${word} ${inDigits(bound)}.`,
    remedy: ({ right }: Found & { word: string; bound: number }) => right,
  },
  'request/length': {
    status: 400,
    exit: 1,
    text: ({ place, size, of, word, bound }: { place: string; right: string } & Length) =>
      `${place} has ${size} ${of}; it must have ${word} ${bound}.`,
    remedy: ({ right }: { place: string; right: string } & Length) => right,
  },
  'request/more-faults': {
    status: 400,
    exit: 1,
    text: ({ named }: { named: number }) => `There are more faults than the ${named} named here.`,
    remedy: 'Correct these and send the request again.',
  },
  'specification/too-many-lets': {
    status: 400,
    exit: 1,
    text: ({ count, limit }: { count: number; limit: number }) =>
      `There are ${count} expressions of one’s own; at most ${limit} are read.`,
    remedy: 'Leave out those that nothing names.',
  },
  'specification/front-repeated': {
    status: 400,
    exit: 1,
    text: ({ quantity }: { quantity: string }) =>
      `"${quantity}" is weighed against itself: the front names it twice.`,
    remedy: 'Name each quantity of the front once.',
  },
  'specification/version-unknown': {
    status: 400,
    exit: 1,
    text: ({ version }: { version: string; newest: number }) =>
      `The version of the specification is ${version}, which this release does not know.`,
    remedy: ({ newest }: { version: string; newest: number }) =>
      newest === 1 ? 'Write version 1.' : `Write a version from 1 to ${newest}.`,
  },
  'specification/name': {
    status: 400,
    exit: 1,
    text: () => 'The name has a line break, a control character or half of a character in it.',
    remedy: 'Write the name as one line of plain text.',
  },
  'specification/unknown-element': {
    status: 400,
    exit: 1,
    text: ({ symbol, meant }: { symbol: string; meant: string }) =>
      `"${symbol}" is not the symbol of an element with data${orMeant(meant)}`,
    remedy: 'Use the symbols that GET /api/v1/elements or "data elements" lists.',
  },
  'specification/duplicate-element': {
    status: 400,
    exit: 1,
    text: ({ symbol }: { symbol: string }) => `${symbol} is named twice in the same list.`,
    remedy: ({ symbol }: { symbol: string }) => `Name ${symbol} once.`,
  },
  'specification/required-and-forbidden': {
    status: 400,
    exit: 1,
    text: ({ symbol }: { symbol: string }) => `${symbol} is both required and forbidden.`,
    remedy: ({ symbol }: { symbol: string }) => `Take ${symbol} out of require or out of forbid.`,
  },
  'specification/pool-too-small': {
    status: 400,
    exit: 1,
    text: ({ min, pool }: { min: number; pool: number }) =>
      `Alloys of at least ${min} elements are asked for, but the pool has ${pool} (require adds to it, forbid removes from it).`,
    remedy: 'Add elements to the pool or ask for fewer components.',
  },
  'specification/too-many-required': {
    status: 400,
    exit: 1,
    text: ({ required, max }: { required: number; max: number }) =>
      `${required} elements are required, but an alloy may have at most ${max}.`,
    remedy: 'Require fewer elements or allow more components.',
  },
  'specification/step': {
    status: 400,
    exit: 1,
    text: ({ found }: { found: number; steps: string }) => `A step of ${found} at.% is not offered.`,
    remedy: ({ steps }: { found: number; steps: string }) => `Use one of these steps: ${steps} (at.%).`,
  },
  'specification/bounds-crossed': {
    status: 400,
    exit: 1,
    text: ({ what, min, max }: { what: string; min: number; max: number }) =>
      `${what}: the lower bound ${min} is above the upper bound ${max}.`,
    remedy: 'Lower the minimum or raise the maximum.',
  },
  'specification/bounds-between-steps': {
    status: 400,
    exit: 1,
    text: ({ what, min, max, step }: { what: string; min: number; max: number; step: number }) =>
      `${what}: no multiple of the step of ${step} at.% lies between ${min} and ${max} at.%.`,
    remedy: 'Widen the bounds or take a finer step.',
  },
  'specification/limit-without-bound': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) => `The limit on ${what} has neither min nor max.`,
    remedy: 'Give it a min or a max or both.',
  },
  'specification/anchor-missing': {
    status: 400,
    exit: 1,
    text: ({ key, what }: { key: string; what: string }) =>
      `Several quantities are ranked together, and ${what} has no "${key}".`,
    remedy:
      'Give each entry the values between which it becomes desirable: from and to, or within for a target.',
  },
  'specification/anchor-idle': {
    status: 400,
    exit: 1,
    text: ({ key, what }: { key: string; what: string }) =>
      `"${key}" says nothing about ${what}: high and low take from and to, a target takes within.`,
    remedy: ({ key }: { key: string; what: string }) => `Leave "${key}" out.`,
  },
  'specification/anchor-alone': {
    status: 400,
    exit: 1,
    text: ({ key, what }: { key: string; what: string }) =>
      `Candidates are ranked by ${what} alone, so "${key}" would change nothing.`,
    remedy: ({ key }: { key: string; what: string }) => `Leave "${key}" out, or rank by several quantities.`,
  },
  'specification/anchors-crossed': {
    status: 400,
    exit: 1,
    text: ({ what, from, to }: { what: string; from: number; to: number }) =>
      `${what}: from is ${from}, which is not below to, ${to}.`,
    remedy: 'Write the smaller value as from and the larger as to, for high and for low alike.',
  },
  'plan/engine-version': {
    status: 500,
    exit: 2,
    text: ({ planned, here }: { planned: string; here: string }) =>
      `The search was planned for engine version ${planned}, and this is engine version ${here}.`,
    remedy: 'Run api, terminal and workers from the same release, or start the search anew.',
  },
  'outcome/unreadable': {
    status: 500,
    exit: 2,
    text: ({ found }: { found: string }) => `What scoring found cannot be read: ${found}.`,
    remedy: 'Run api, terminal and workers from the same release; the chunk is then scored again.',
  },
  'search/unknown': {
    status: 404,
    exit: 1,
    text: ({ id }: { id: string }) => `There is no search "${id}".`,
    remedy: 'The page Searches, "results list" and GET /api/v1/searches list all of them.',
  },
  'search/not-finished': {
    status: 409,
    exit: 1,
    text: ({ state }: { state: string }) => `The search is ${state}: it has no candidates to show.`,
    remedy: ({ state }: { state: string }) => {
      if (state === 'cancelled')
        return 'Start the same specification anew: what is cancelled is over for good.';
      const wait = 'wait until the search is done';
      if (state === 'paused' || state === 'failed')
        return `Resume it, on its page or with "searches resume", and ${wait}.`;
      return `${wait.replace('w', 'W')}; its page shows how far it is, and "searches watch" where a service works on it.`;
    },
  },
  'search/not-possible': {
    status: 409,
    exit: 1,
    text: ({ act, state }: { act: string; state: string }) =>
      `The search is ${state}, so one cannot ${act} it.`,
    remedy: 'Start the same specification anew to search again.',
  },
  'search/closed': {
    status: 503,
    exit: 2,
    text: () => 'The program ended before the search did.',
    remedy: 'Start it again on the same database: the search goes on where it stood.',
  },
  'search/key-reused': {
    status: 409,
    exit: 1,
    text: ({ id, differing }: { id: string; differing: string }) =>
      `The idempotency key belongs to the search ${id}, which differs in ${differing}.`,
    remedy:
      'Send a new key with a new search; PUT /api/v1/searches/ID/schedule changes hours and priority of one that is there.',
  },
  'search/no-points': {
    status: 400,
    exit: 1,
    text: () => 'No composition lies on this grid: the bounds of the elements do not add up to 100 at.%.',
    remedy: 'Widen the bounds of the elements, take a finer step, or allow other numbers of components.',
  },
  'search/too-many-points': {
    status: 400,
    exit: 1,
    text: ({ points, most }: { points: string; most: string }) =>
      `The search has ${points} points; at most ${most} are searched.`,
    remedy: 'Take a coarser step, a smaller pool, fewer components or narrower bounds.',
  },
  'search/value-missing': {
    status: 400,
    exit: 1,
    text: ({ quantity, value, elements }: { quantity: string; value: string; elements: string }) =>
      `${quantity} needs the value ${value}, which is not known for ${elements}.`,
    remedy: ({ elements }: { quantity: string; value: string; elements: string }) =>
      `Take ${elements} out of the pool, or leave this quantity out of limits and ranking.`,
  },
  'search/price-missing': {
    status: 400,
    exit: 1,
    text: ({ quantity, elements }: { quantity: string; elements: string }) =>
      `${quantity} needs prices, and the price list in force has none for ${elements}.`,
    remedy: ({ elements }: { quantity: string; elements: string }) =>
      `Add ${elements} to the price list, take them out of the pool, or leave this quantity out of limits and ranking.`,
  },
  'search/limit-unreachable': {
    status: 400,
    exit: 1,
    text: ({ quantity, low, high }: { quantity: string; low: string; high: string }) =>
      `No composition of this grid can meet the limit: its ${quantity} lies between ${low} and ${high}.`,
    remedy: ({ low, high }: { quantity: string; low: string; high: string }) =>
      `Set a limit that leaves something between ${low} and ${high}, or change the grid.`,
  },
  'candidate/unknown': {
    status: 404,
    exit: 1,
    text: ({ composition }: { composition: string }) =>
      `The search kept no candidate of the composition ${composition}.`,
    remedy: 'Its candidates are listed under /api/v1/searches/ID/candidates.',
  },
  'store/in-use': {
    status: 503,
    exit: 2,
    text: ({ file }: { file: string }) => `The database ${file} is in use by another process.`,
    remedy:
      'Stop the other process, or name another file: one process works on the searches of a database. Short commands go on beside it.',
  },
  'store/newer': {
    status: 500,
    exit: 2,
    text: ({ file, found, known }: { file: string; found: number; known: number }) =>
      `The database ${file} has form ${found}; this release knows forms up to ${known}.`,
    remedy: 'Start the release that wrote it, or a later one.',
  },
  'store/foreign': {
    status: 500,
    exit: 2,
    text: ({ file }: { file: string }) => `${file} is not a database of searches.`,
    remedy: 'Name another file; this one was left as it is.',
  },
  'store/unreachable': {
    status: 500,
    exit: 2,
    text: ({ file, why }: { file: string; why: string }) => `The database ${file} cannot be opened: ${why}.`,
    remedy: 'Name a file in a folder that this program may write to.',
  },
  'store/damaged': {
    status: 500,
    exit: 2,
    text: ({ file, why }: { file: string; why: string }) => `The database ${file} is damaged: ${why}.`,
    remedy: 'Stop the program, keep a copy of the file, and put a backup in its place.',
  },
  'store/full': {
    status: 507,
    exit: 2,
    text: ({ file }: { file: string }) => `The file ${file} cannot grow: the disk or its quota is full.`,
    remedy: 'Make room on the disk and resume; everything stored so far is kept.',
  },
  'store/busy': {
    status: 503,
    exit: 2,
    text: ({ file }: { file: string }) => `Another program keeps the database ${file} locked.`,
    remedy: 'Try again when it has finished, or close it; everything stored so far is kept.',
  },
  'store/read-only': {
    status: 500,
    exit: 2,
    text: ({ file, why }: { file: string; why: string }) =>
      `The database ${file} may only be read by whoever runs this program: ${why}.`,
    remedy:
      'Get the right to write the file and its folder, or copy the file into a folder of your own. Reading needs it too where a -wal or -journal file lies beside it: close the program that works on it.',
  },
  'store/failed': {
    status: 500,
    exit: 2,
    text: ({ file, why }: { file: string; why: string }) =>
      `The database ${file} did not take what was written: ${why}.`,
    remedy: 'Look at the disk and the rights of the file, and resume; everything stored so far is kept.',
  },
  'queue/out-of-reach': {
    status: 503,
    exit: 2,
    text: ({ place, why }: { place: string; why: string }) => `Redis at ${place} is out of reach: ${why}.`,
    remedy: 'Start Redis or correct REDIS_URL; without REDIS_URL this machine scores by itself.',
  },
  'command/usage': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) => `The command cannot be read: ${what}`,
    remedy: 'See "npm run -s tiegel -- help" and "npm run -s tiegel -- help COMMAND".',
  },
  'command/nothing-to-screen': {
    status: 400,
    exit: 1,
    text: () => 'No alloy was given.',
    remedy: 'Write alloys such as AlCoCrFeNi behind the command, or one a line in a file for --file.',
  },
  'file/unreadable': {
    status: 400,
    exit: 1,
    text: ({ file, why }: { file: string; why: string }) => `${fileRead(file)} cannot be read: ${why}.`,
    remedy: 'Name a file that is there and may be read, or - for standard input.',
  },
  'file/encoding': {
    status: 400,
    exit: 1,
    text: ({ file }: { file: string }) =>
      `${fileRead(file)} is no text in UTF-8: its letters would become others.`,
    remedy: 'Save it in UTF-8 (a spreadsheet as "CSV UTF-8"), then try again.',
  },
  'file/empty': {
    status: 400,
    exit: 1,
    text: ({ file }: { file: string }) => `The file ${file} is empty.`,
    remedy: 'Name a file with something in it.',
  },
  'file/exists': {
    status: 400,
    exit: 1,
    text: ({ file }: { file: string }) => `The file ${file} is there already.`,
    remedy: 'Name another file, or say --overwrite to lose what is in it.',
  },
  'file/not-replaceable': {
    status: 400,
    exit: 1,
    text: ({ file, what }: { file: string; what: string }) =>
      `${file} is ${what}, which a file must not take the place of.`,
    remedy: 'Name another file, or say - for standard output and let the shell lead that on.',
  },
  'output/refused': {
    status: 500,
    exit: 2,
    text: ({ why }: { why: string }) => `Standard output does not take what is written: ${why}.`,
    remedy: 'Make room where it leads to, or lead it elsewhere.',
  },
  'file/unwritable': {
    status: 400,
    exit: 1,
    text: ({ file, why }: { file: string; why: string }) => `The file ${file} cannot be written: ${why}.`,
    remedy: 'Name a file in a folder that is there and may be written in.',
  },
  'file/too-large': {
    status: 400,
    exit: 1,
    text: ({ file, size, limit }: { file: string; size: number; limit: number }) =>
      `${fileRead(file)} has ${size} characters; more than ${limit} are not read.`,
    remedy: 'Divide it.',
  },
  'file/malformed-json': {
    status: 400,
    exit: 1,
    text: ({ file, found }: { file: string; found: string }) => `${fileRead(file)} is not JSON: ${found}.`,
    remedy:
      'Write one JSON value, with double quotes around names and texts and no comma at the end of a list.',
  },
  'command/search-ended': {
    status: 500,
    exit: 2,
    text: ({ state, reason }: { state: string; reason: string }) => `The search is ${state}: ${reason}.`,
    remedy:
      '"searches resume" goes on where it stood: of a database with --database FILE, else of a service. Without either, start it anew.',
  },
  'export/too-many-rows': {
    status: 400,
    exit: 1,
    text: ({ rows, most }: { rows: number; most: number }) =>
      `A spreadsheet holds at most ${most} rows, and these are ${rows}.`,
    remedy: 'Filter the candidates, or take them as CSV or Parquet, which have no limit.',
  },
  'export/unreadable': {
    status: 400,
    exit: 1,
    text: ({ file, what }: { file: string; what: string }) =>
      `${file} cannot be read as an export of candidates: ${what}.`,
    remedy: 'Name a file that was exported as CSV or NDJSON and not changed since.',
  },
  'export/other-versions': {
    status: 400,
    exit: 1,
    text: ({ what }: { what: string }) =>
      `The rows are not the same, and neither is ${what} that the export was made with.`,
    remedy: 'Use the release and the price list (--prices) of the export, or take the new rows.',
  },
  'export/not-reproduced': {
    status: 500,
    exit: 2,
    text: () => 'The rows are not the same although data and engine are: this must not happen.',
    remedy: 'Check that nobody changed the file; if nobody did, report the export as a fault of the program.',
  },
  'substitute/absent': {
    status: 400,
    exit: 1,
    text: ({ symbol, alloy }: { symbol: string; alloy: string }) =>
      `${symbol} cannot be replaced: ${alloy} does not hold it.`,
    remedy: 'Name an element of the alloy to be replaced.',
  },
  'substitute/itself': {
    status: 400,
    exit: 1,
    text: ({ symbol }: { symbol: string }) => `${symbol} cannot replace itself.`,
    remedy: ({ symbol }: { symbol: string }) => `Name other elements than ${symbol} to come instead.`,
  },
  'weighing/too-many-elements': {
    status: 400,
    exit: 1,
    text: ({ count, limit }: { count: number; limit: number }) =>
      `The alloy has ${count} elements; weighing is worked out for at most ${limit}.`,
    remedy: 'Leave out traces that are not weighed by themselves.',
  },
  'weighing/resolution': {
    status: 400,
    exit: 1,
    text: ({ mass, resolution }: { mass: number; resolution: number }) =>
      `A balance that shows ${resolution} g cannot weigh a batch of ${mass} g.`,
    remedy: 'Enlarge the batch, or take a balance with smaller steps.',
  },
  'expression/length': {
    status: 400,
    exit: 1,
    text: ({ length, limit }: { length: number; limit: number }) =>
      `The formula has ${length} characters; at most ${limit} are read.`,
    remedy: 'Shorten it, or give a part of it a name of its own.',
  },
  'expression/too-complex': {
    status: 400,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The formula has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'Make it simpler.',
  },
  'expression/syntax': {
    status: 400,
    exit: 1,
    text: ({ place, found }: { place: number; found: string; expected: string }) =>
      `The formula cannot be read at character ${place}, where ${found}.`,
    remedy: ({ expected }: { place: number; found: string; expected: string }) =>
      `What may stand there: ${expected}. Decimals have a point, products a *.`,
  },
  'expression/number': {
    status: 400,
    exit: 1,
    text: ({ place, found }: { place: number; found: string }) =>
      `${found}, at character ${place} of the formula, is too large, or too near 0, to be a number here.`,
    remedy: 'Write 0, or a number between 5e-324 and 1.7e308.',
  },
  'expression/unknown-name': {
    status: 400,
    exit: 1,
    text: ({ place, name, near }: { place: number; name: string; near: string }) =>
      `"${name}", at character ${place} of the formula, is not a quantity${orMeant(near)}`,
    remedy:
      'Use the ids that "screen CoNi --json" and GET /api/v1/quantities list, and names of your own that stand before.',
  },
  'expression/unknown-function': {
    status: 400,
    exit: 1,
    text: ({ place, name, near }: { place: number; name: string; near: string; known: string }) =>
      `"${name}", at character ${place} of the formula, is not a function${orMeant(near)}`,
    remedy: ({ known }: { place: number; name: string; near: string; known: string }) =>
      `The functions: ${known}. Write a product with a *.`,
  },
  'expression/values': {
    status: 400,
    exit: 1,
    text: ({ place, name, given }: { place: number; name: string; wanted: string; given: number }) =>
      `${name}, at character ${place} of the formula, is given ${given === 1 ? 'one value' : `${given} values`}.`,
    remedy: ({ name, wanted }: { place: number; name: string; wanted: string; given: number }) =>
      `Give ${name} ${wanted === '1' ? 'one value' : `${wanted} values`}.`,
  },
  'expression/units': {
    status: 400,
    exit: 1,
    text: (values: { place: number; left: string; leftUnit: string; right: string; rightUnit: string }) =>
      `"${values.left}" (${values.leftUnit}) and "${values.right}" (${values.rightUnit}), at character ${values.place} of the formula, have different units and cannot be added or compared.`,
    remedy:
      'Divide each by a number in its own unit, as in density/8 + meltingTemperature/2000: a typed number may carry any unit.',
  },
  'expression/not-plain': {
    status: 400,
    exit: 1,
    text: ({ place, name, part, unit }: { place: number; name: string; part: string; unit: string }) =>
      `"${part}", at character ${place} of the formula, is in ${unit}, but ${name} takes a plain number.`,
    remedy: 'Divide it by a number in that unit, as in ln(density/8): a typed number may carry any unit.',
  },
  'expression/exponent': {
    status: 400,
    exit: 1,
    text: ({ place, found }: { place: number; found: string }) =>
      `The exponent "${found}", at character ${place} of the formula, is not a number.`,
    remedy: 'Write a number as the exponent, as in density^2 or density^(1/3).',
  },
  'expression/no-value': {
    status: 400,
    exit: 1,
    text: ({ place, part }: { place: number; part: string }) =>
      `"${part}", at character ${place} of the formula, has no value.`,
    remedy: 'Divide by no 0, and take roots and logarithms of positive numbers.',
  },
  'expression/no-quantity': {
    status: 400,
    exit: 1,
    text: () => 'The formula names no quantity, so it is the same for every alloy.',
    remedy: 'Name at least one quantity, as in omega - density/8.',
  },
  'expression/name': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" cannot be a name in formulas.`,
    remedy:
      'Begin with a letter and go on with letters, digits and underscores, at most 64 in all: stiffness_per_mass.',
  },
  'expression/name-taken': {
    status: 400,
    exit: 1,
    text: ({ name }: { name: string }) => `"${name}" is the name of something else already.`,
    remedy: 'Choose another name.',
  },
  'column/unknown': {
    status: 404,
    exit: 1,
    text: ({ id }: { id: string }) => `No column of one’s own is called "${id}".`,
    remedy: 'GET /api/v1/columns lists those in force.',
  },
  'column/too-large': {
    status: 413,
    exit: 1,
    text: ({ size, limit, of }: { size: number; limit: number; of: string }) =>
      `The column has ${size} ${of}; at most ${limit} are read.`,
    remedy: 'A column has one row for each element: leave everything else out.',
  },
  'column/unreadable': {
    status: 400,
    exit: 1,
    text: ({ line, what }: { line: number; what: string }) =>
      `The column cannot be read at line ${line}: ${what}.`,
    remedy:
      'Separate fields with commas, or with semicolons or tabs throughout; put a field that holds such a sign or a quote in double quotes and double the quotes in it.',
  },
  'column/empty': {
    status: 400,
    exit: 1,
    text: () => 'The column has no rows.',
    remedy: 'Write the header symbol,value,name,unit,mixing and below it a row for each element.',
  },
  'column/missing-column': {
    status: 400,
    exit: 1,
    text: ({ column, meant }: { column: string; meant: string }) =>
      `The header has no "${column}"${meant === '' ? '.' : `; did you mean it by "${meant}"?`}`,
    remedy: 'Begin with the header symbol,value,name,unit,mixing, separated by commas, semicolons or tabs.',
  },
  'column/repeated-column': {
    status: 400,
    exit: 1,
    text: ({ column }: { column: string }) => `The header has "${column}" twice.`,
    remedy: ({ column }: { column: string }) => `Keep one "${column}".`,
  },
  'column/row-length': {
    status: 400,
    exit: 1,
    text: ({ line, fields, columns }: { line: number; fields: number; columns: number }) =>
      `Line ${line} has ${fields} fields where the header has ${columns}.`,
    remedy:
      'Write a field for each part of the header, empty where nothing is said; a decimal comma splits a number in two.',
  },
  'column/repeated-element': {
    status: 400,
    exit: 1,
    text: ({ line, symbol, first }: { line: number; symbol: string; first: number }) =>
      `${symbol} has a value on line ${first} and another on line ${line}.`,
    remedy: ({ symbol }: { line: number; symbol: string; first: number }) => `Keep one row for ${symbol}.`,
  },
  'column/value': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The value on line ${line} is "${found}".`,
    remedy:
      'Write a number of at most 1e15 in size, in digits with a decimal point; leave out the row of an element whose value is unknown.',
  },
  'column/decimal-comma': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) =>
      `The value on line ${line}, "${found}", has a comma in it.`,
    remedy: 'Write decimals with a point and thousands without a sign: 1234.50.',
  },
  'column/name': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The name on line ${line} is "${found}".`,
    remedy:
      'Give the column a name of at most 60 characters that begins with a letter from A to Z, as in Thermal conductivity.',
  },
  'column/name-taken': {
    status: 400,
    exit: 1,
    text: ({ line, name }: { line: number; name: string }) =>
      `The name on line ${line} gives "${name}", which is a column already.`,
    remedy: 'Choose another name.',
  },
  'column/unit': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The unit on line ${line} is "${found}".`,
    remedy: 'Write the unit in at most 30 characters, as in W/(m K); leave it empty for a plain number.',
  },
  'column/mixing': {
    status: 400,
    exit: 1,
    text: ({ line, found }: { line: number; found: string }) => `The mixing on line ${line} is "${found}".`,
    remedy: 'Write mole, mass or volume: what the values are weighted by in an alloy.',
  },
  'column/several': {
    status: 400,
    exit: 1,
    text: ({ line, field, found, first }: { line: number; field: string; found: string; first: string }) =>
      `The ${field} on line ${line} is "${found}", the first row said "${first}".`,
    remedy:
      'Say name, unit and mixing in the first row and leave them empty below; give another column a file of its own.',
  },
} satisfies Record<string, ProblemKind>;

export type ProblemCode = keyof typeof problems;
