import { once } from '../../base/remembered.js';
import type { Block } from '../../documents/block.js';
import type { Table } from '../../documents/table.js';
import { type TablePart, tableBlock, tableHead, titledPart } from '../../documents/table-block.js';
import type { Vec2 } from '../../math/vec.js';
import { drawnBlocks, FreeRoom, type PlacedBlock, ROUNDING, shareOf } from './free-room.js';
import type { Ground } from './ground.js';
import type { Page } from './page.js';

/** A table that may go on in the next column or on the next sheet, at most so wide. */
export interface Long {
  readonly table: Table;
  readonly width: number;
}

export type Piece = Block | Long;

/** Fewer rows than these don't begin a table at the end of a column. */
const LEAST_ROWS = 4;

/** What stands somewhere: a block, or some rows of a table, whose title tells which part it is of how many. */
interface Put {
  readonly placed: PlacedBlock;
  readonly part?: { readonly of: Long; readonly rows: TablePart };
}

/** Pieces in their order on as many pages as they take; `null` where one is too large for any. */
export function flowedPages(ground: Ground, pieces: readonly Piece[], even: boolean): Page[] | null {
  const pages: Put[][] = [];
  let left = pieces;
  /** Rows of the first piece that stand already. */
  let done = 0;
  while (left.length > 0) {
    const page = flowPage(ground, left, done, even);
    // A block that is too large for any sheet would come back for ever.
    if (page.puts.length === 0) return null;
    pages.push(page.puts);
    [left, done] = [page.rest, page.done];
  }
  const areas = (puts: readonly Put[]) => puts.map(({ placed }) => placed.area);
  // Most arrangements are only tried.
  const papers = once(() => withTitles(pages).map((placed) => drawnBlocks(placed, ground.letters)));
  return pages.map((puts, i) => ({
    views: [],
    get paper() {
      return papers()[i] ?? [];
    },
    tables: [],
    filled: shareOf(areas(puts), ground.whole),
  }));
}

/** Parts of a table are told apart once it is known how many there are. */
function withTitles(pages: readonly (readonly Put[])[]): PlacedBlock[][] {
  const parts = new Map<Long, TablePart[]>();
  for (const { part } of pages.flat()) if (part) parts.set(part.of, [...(parts.get(part.of) ?? []), part.rows]);
  return pages.map((puts) =>
    puts.map(({ placed, part }): PlacedBlock => {
      if (!part) return placed;
      const all = parts.get(part.of) ?? [];
      return { ...placed, block: tableBlock(titledPart(part.rows, all.indexOf(part.rows), all.length), part.of.width) };
    }),
  );
}

/** One sheet of pieces, and what is left: the pieces that found no room, and of the first of them how many rows are done. */
function flowPage(
  { inner, form }: Ground,
  pieces: readonly Piece[],
  begun: number,
  even: boolean,
): { puts: Put[]; rest: readonly Piece[]; done: number } {
  const room = new FreeRoom(inner, [form]);
  const puts: Put[] = [];
  const put = (block: Block, at: Vec2, part?: Put['part']) => {
    room.place(block, at);
    puts.push({ placed: room.placed[room.placed.length - 1] as PlacedBlock, ...(part && { part }) });
  };
  let done = begun;
  for (const [placed, piece] of pieces.entries()) {
    if (!('table' in piece)) {
      const corner = room.corners(piece, even).find((at) => room.fits(piece, at));
      if (!corner) return { puts, rest: pieces.slice(placed), done: 0 };
      put(piece, corner);
      continue;
    }
    const { table, width } = piece;
    while (done < table.rows.length) {
      const whole = tableHead(table, done, Number.POSITIVE_INFINITY, width);
      const block = tableBlock(done > 0 ? measured(whole) : whole, width);
      const corners = room.cornersAhead(block, even);
      const corner = corners.find((at) => room.fits(block, at));
      if (corner) {
        put(block, corner, { of: piece, rows: whole });
        break;
      }
      const begin = beginning(room, piece, done, corners);
      if (!begin) return { puts, rest: pieces.slice(placed), done };
      put(begin.block, begin.at, { of: piece, rows: begin.rows });
      done += begin.rows.rows.length;
    }
    done = 0;
  }
  return { puts, rest: [], done: 0 };
}

/** A part under a title as long as any that it may get. */
const measured = (part: TablePart): TablePart => titledPart(part, MOST_PARTS - 1, MOST_PARTS);
const MOST_PARTS = 99;

/** The next rows of a table at the first corner that has room for more than hardly any; none where there is no such room. */
function beginning(room: FreeRoom, { table, width }: Long, from: number, corners: readonly Vec2[]) {
  for (const at of corners) {
    const own = tableBlock(measured(tableHead(table, from, 0, width)), width).width;
    const rows = tableHead(table, from, room.roomUnder(at, own) + ROUNDING, width);
    if (rows.rows.length < Math.min(LEAST_ROWS, table.rows.length - from)) continue;
    const block = tableBlock(measured(rows), width);
    if (room.fits(block, at)) return { at, rows, block };
  }
  return null;
}
