/**
 * Advance widths of DejaVu Sans 2.37 in units of 1/2048 em (its own metrics), with which texts are laid out.
 * The font itself is named in the files, not kept in them.
 */
const EM = 2048;
const CAPITAL = 1493;

/** Codes 32 to 126. */
const ASCII = [
  651, 821, 942, 1716, 1303, 1946, 1597, 563, 799, 799, 1024, 1716, 651, 739, 651, 690, 1303, 1303, 1303, 1303, 1303,
  1303, 1303, 1303, 1303, 1303, 690, 690, 1716, 1716, 1716, 1087, 2048, 1401, 1405, 1430, 1577, 1294, 1178, 1587, 1540,
  604, 604, 1343, 1141, 1767, 1532, 1612, 1235, 1612, 1423, 1300, 1251, 1499, 1401, 2025, 1403, 1251, 1403, 799, 690,
  799, 1716, 1024, 1024, 1255, 1300, 1126, 1300, 1260, 721, 1300, 1298, 569, 569, 1186, 569, 1995, 1298, 1253, 1300,
  1300, 842, 1067, 803, 1298, 1212, 1675, 1212, 1212, 1075, 1303, 690, 1303, 1716,
];

const OTHERS: Readonly<Record<string, number>> = {
  '°': 1024,
  '±': 1716,
  '²': 821,
  '³': 821,
  '·': 651,
  '×': 1716,
  Ø: 1612,
  '–': 1024,
  '—': 2048,
  '−': 1716,
  '′': 465,
  '″': 765,
};

/** Width of an accented capital such as Ö; every lower-case one of Latin is narrower. */
const WIDE_LETTER = 1612;

/** Font height (em) of a text whose capitals are `capitalHeight` high, in the same unit. */
export const emOf = (capitalHeight: number): number => (capitalHeight * EM) / CAPITAL;

/** Width of a text whose capitals are `capitalHeight` high, in the same unit; unknown letters count as wide. */
export function textWidth(text: string, capitalHeight: number): number {
  let units = 0;
  for (const letter of text) {
    const code = letter.codePointAt(0) as number;
    units += ASCII[code - 32] ?? OTHERS[letter] ?? (code < 0x250 ? WIDE_LETTER : EM);
  }
  return (units / CAPITAL) * capitalHeight;
}
