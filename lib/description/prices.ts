import { parseNumber, shown } from '../base/quantities.js';
import { nearest } from '../base/suggest.js';
import type { Price, Prices } from './house.js';
import { isMapping } from './issues.js';
import type { ProblemList } from './problem-list.js';
import { ID_PATTERN } from './schema/leaves.js';
import { PRICE_UNITS } from './schema/works.js';
import type { DescriptionOutput } from './schema.js';

const ITEM = new RegExp(ID_PATTERN);

/** Reads the price list: one currency, and for each item an amount with a unit and its price. */
export function pricesFrom(prices: DescriptionOutput['prices'], problems: ProblemList): Prices | undefined {
  const { currency, ...rest } = prices;
  const items: Record<string, Price> = {};
  let sound = true;
  const refuse = (key: string, message: string, mend: string) => {
    problems.add(key === 'currency' ? 'price-currency' : 'price-item', ['prices', key], message, mend);
    sound = false;
  };
  for (const [name, entry] of Object.entries(rest)) {
    const price = isMapping(entry) ? priceOf(entry.per, entry.price) : null;
    if (!ITEM.test(name))
      refuse(name, `"${shown(name)}" can't name an item.`, 'Use small letters a-z, digits and hyphens.');
    else if (!price) {
      const unit = typeof entry === 'string' ? null : lastWord(entry.per);
      // A unit that is one isn't what is wrong.
      const near = unit === null || PRICE_UNITS.some((own) => own === unit) ? null : nearest(unit, PRICE_UNITS);
      const hint = near === null ? '' : `Did you mean "${near}"? `;
      const example = `${name}: { per: 25 kg, price: 6.20 }`;
      refuse(
        name,
        `The price of "${name}" can't be read.`,
        `${hint}Write it like ${example}; units: ${PRICE_UNITS.join(', ')}.`,
      );
    } else items[name] = price;
  }
  if (currency === undefined && Object.keys(rest).length === 0) return { currency: '', items };
  if (typeof currency !== 'string' || !/^[A-Z]{3}$/.test(currency)) {
    const given = currency === undefined ? 'The prices have no currency.' : 'The currency is not three capitals.';
    refuse('currency', given, 'Write it by its three letters, like `currency: EUR`.');
    return undefined;
  }
  return sound ? { currency, items } : undefined;
}

const lastWord = (text: string): string => text.slice(-12).replace(/^[\d.\s]*/, '');

function priceOf(per: string, price: number): Price | null {
  const parts = /^(?:([\d.]{1,12})\s*)?([A-Za-z]{1,6}[23]?)$/.exec(per.trim());
  const unit = PRICE_UNITS.find((u) => u.toLowerCase() === parts?.[2]?.toLowerCase());
  const amount = parseNumber(parts?.[1] ?? '1');
  return unit === undefined || amount === null || amount <= 0 ? null : { amount, unit, price };
}
