// Prints what a table of the elements and a library for quantities say: { elements: { Ag: { density, melting } }, units: { "lb>g": 453.59 } }.
const Qty = require('js-quantities');
const table = require('periodic-table');

const elements = {};
for (const [symbol, element] of Object.entries(table.symbols)) {
  elements[symbol] = { density: Number(element.density) || 0, melting: Number(element.meltingPoint) || 0 };
}

const units = {};
for (const pair of process.argv.slice(2)) {
  const [from, to] = pair.split('>');
  units[pair] = Qty(from).to(to).scalar;
}

process.stdout.write(JSON.stringify({ elements, units }));
