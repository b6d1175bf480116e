// Figures of a general-purpose ingredient parser on the period lines.
//
// A fair mapping: its units are brought to our singular words; a number without a unit is a counted
// whole, no number and no unit is unstated; quantities are compared as decimals to 1/1000; a leading
// "of" and articles are taken off its description. It states no certainty, so that "wrong amount
// stated" counts every line where it gives an amount that is not the printed one.
import { readFileSync } from 'node:fs';
import { parseIngredient } from 'parse-ingredient';

const UNITS = {
  ounce: 'oz', fluidounce: 'oz', pound: 'lb', teaspoon: 'teaspoon', tablespoon: 'tablespoon',
  cup: 'cup', pint: 'pint', quart: 'quart', gallon: 'gallon', dash: 'dash', drop: 'drop',
  bottle: 'bottle', slice: 'slice', piece: 'piece', sprig: 'sprig', drachm: 'drachm', part: 'part',
};

const decimal = (text) =>
  text === ''
    ? null
    : text.split(' ').reduce((sum, word) => {
        const [over, under] = word.split('/').map(Number);
        return sum + (under ? over / under : over);
      }, 0);

const same = (a, b) => (a === null || b === null ? a === b : Math.abs(a - b) < 1e-3);

const words = (text) =>
  new Set(
    text
      .toLowerCase()
      .replace(/[.,;()-]/g, ' ')
      .replace(/^\s*(of\s+)?((the|a|an)\s+)?/, '')
      .split(/\s+/)
      .filter(Boolean),
  );

const read = (text) => {
  const first = parseIngredient(text, { normalizeUOM: true })[0];
  if (!first) {
    return { quantity: null, most: null, measure: '', words: new Set() };
  }
  const unit = first.unitOfMeasureID ?? first.unitOfMeasure;
  const bare = first.quantity === null ? 'unstated' : 'whole';
  return {
    quantity: first.quantity,
    most: first.quantity2,
    measure: unit ? (UNITS[unit] ?? unit) : bare,
    words: words(first.description),
  };
};

const halves = {};
for (const file of process.argv.slice(2)) {
  for (const row of readFileSync(file, 'utf8').split('\n').slice(1).filter(Boolean)) {
    const c = row.split('\t');
    const got = read(c[6]);
    const truth = words(c[12] ?? '');
    const both = [...got.words].filter((w) => truth.has(w)).length;
    const size = got.words.size + truth.size;
    const quantity = same(got.quantity, decimal(c[8])) && same(got.most, decimal(c[9]));
    const measure = got.measure === c[10];
    const f1 = size === 0 ? 1 : (2 * both) / size;
    const half = (halves[c[1]] ??= { lines: 0, quantity: 0, measure: 0, f1: 0, whole: 0, wrong: 0 });
    half.lines += 1;
    half.quantity += quantity;
    half.measure += measure;
    half.f1 += f1;
    half.whole += quantity && measure && f1 > 0.999;
    half.wrong += got.quantity !== null && !(quantity && measure);
  }
}

console.log('A general-purpose ingredient parser (parse-ingredient 3.0.0):');
for (const [name, h] of Object.entries(halves).sort()) {
  const share = (n) => (n / h.lines).toFixed(3);
  console.log(
    `  half ${name}, ${h.lines} lines: quantity ${share(h.quantity)}, measure ${share(h.measure)}, ` +
      `name F1 ${share(h.f1)}, whole line right ${share(h.whole)}, wrong amount stated ${share(h.wrong)}`,
  );
}
