// Loaded into npm by setup.mjs. npm leaves out optional packages, compiled ones among them, that do not
// say they run on the Node that npm itself runs on; they will run on the project's own, so npm is told of that one.
const { optionalDependencies } = require('../package.json');

Object.defineProperty(process, 'version', { value: `v${Object.values(optionalDependencies)[0]}` });
