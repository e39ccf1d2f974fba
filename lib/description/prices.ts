import { parseNumber, shown } from '../base/quantities.js';
import { nearest } from '../base/suggest.js';
import * as texts from '../base/texts/problems-values.js';
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
    if (!ITEM.test(name)) refuse(name, texts.cannotNameItem(shown(name)), texts.useSmallLetters);
    else if (!price) {
      const unit = typeof entry === 'string' ? null : lastWord(entry.per);
      // A unit that is one isn't what is wrong.
      const near = unit === null || PRICE_UNITS.some((own) => own === unit) ? null : nearest(unit, PRICE_UNITS);
      const hint = near === null ? '' : texts.didYouMeanThen(near);
      const example = texts.examplePrice(name);
      refuse(name, texts.priceUnreadable(name), texts.writeItLikeUnits(hint, example, PRICE_UNITS.join(', ')));
    } else items[name] = price;
  }
  if (currency === undefined && Object.keys(rest).length === 0) return { currency: '', items };
  if (typeof currency !== 'string' || !/^[A-Z]{3}$/.test(currency)) {
    const given = currency === undefined ? texts.pricesHaveNoCurrency : texts.currencyIsNotThree;
    refuse('currency', given, texts.writeCurrency);
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
