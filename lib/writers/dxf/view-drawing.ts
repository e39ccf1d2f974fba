import DxfDrawing from 'dxf-writer/src/Drawing.js';
import Handle from 'dxf-writer/src/Handle.js';
import Table from 'dxf-writer/src/Table.js';
import TextStyle from 'dxf-writer/src/TextStyle.js';
import type { LineType } from '../../documents/drawing.js';
import type { Bounds2 } from '../../documents/drawing-bounds.js';
import { dashesOf, LAYERS } from '../../documents/layers.js';
import type { Vec2 } from '../../math/vec.js';
import { type DimensionWriting, dimHeaders, dimStyleName, dimStyleRecord } from './dim-variables.js';
import { TEXT_STYLE, weightCode } from './entities.js';
import { DxfObject, tableRecord } from './object.js';
import { GuardedTags } from './tags.js';

interface Block {
  readonly record: DxfObject;
  readonly begin: DxfObject;
  readonly end: DxfObject;
  readonly entities: DxfObject[];
}

const PAPER_SPACE = '*Paper_Space';
const BLACK_OR_WHITE = 7;
const ANONYMOUS = 1;
/** Names under which readers know the kinds of lines. */
const LINE_TYPES: Readonly<Record<LineType, string>> = {
  continuous: 'Continuous',
  dashed: 'DASHED',
  chain: 'DASHDOT',
  'double-chain': 'DIVIDE',
  dotted: 'DOT',
};
/** No plot style object is named. */
const NO_HANDLE = '0';

/** What a file is made for. */
export interface DrawingFrame {
  /** Dashes, hatches and texts are sized for `1 : scale`. */
  readonly scale: number;
  /** The ways in which dimensions are written; the first is the header's. */
  readonly writings: readonly [DimensionWriting, ...DimensionWriting[]];
  readonly bounds: Bounds2;
}

/**
 * A DXF file (AC1021, UTF-8): the library's frame of tables and sections, with layers that carry weights,
 * blocks with content, dimension styles, and owners that are block records.
 */
export class ViewDrawing extends DxfDrawing {
  private readonly blockTable = new Table('BLOCK_RECORD');
  private readonly content: Block[] = [];
  private readonly symbols = new Set<string>();
  private readonly model: Block;

  constructor(frame: DrawingFrame) {
    super();
    this.addLayersOf(frame.scale);
    this.addStyles(frame);
    this.addHeaders(frame);
    this.model = this.block('*Model_Space', 0);
    this.block(PAPER_SPACE, 0);
  }

  /** Puts an entity into model space. */
  add(entity: DxfObject): void {
    this.model.entities.push(entity.ownedBy(this.model.record.handle));
  }

  /** Makes an anonymous block of the entities, for one dimension, and returns its name. */
  addDimensionBlock(entities: readonly DxfObject[]): string {
    const name = `*D${this.content.length - 1}`;
    const block = this.block(name, ANONYMOUS);
    for (const entity of entities) block.entities.push(entity.ownedBy(block.record.handle));
    return name;
  }

  /** Makes a block of that name, unless there is one. */
  addSymbolBlock(name: string, entities: () => readonly DxfObject[]): void {
    if (this.symbols.has(name)) return;
    this.symbols.add(name);
    const block = this.block(name, 0);
    for (const entity of entities()) block.entities.push(entity.ownedBy(block.record.handle));
  }

  private block(name: string, flags: number): Block {
    const record = tableRecord('BLOCK_RECORD', 'AcDbBlockTableRecord', (tags) => {
      tags.push(2, name);
      tags.push(70, 0);
      tags.push(280, 1);
      tags.push(281, 0);
    });
    const onLayer0 = (tags: GuardedTags): void => {
      tags.push(100, 'AcDbEntity');
      if (name === PAPER_SPACE) tags.push(67, 1);
      tags.push(8, '0');
    };
    const begin = new DxfObject('BLOCK', (tags) => {
      onLayer0(tags);
      tags.push(100, 'AcDbBlockBegin');
      tags.push(2, name);
      tags.push(70, flags);
      tags.place(10, [0, 0]);
      tags.push(3, name);
      tags.push(1, '');
    });
    const end = new DxfObject('ENDBLK', (tags) => {
      onLayer0(tags);
      tags.push(100, 'AcDbBlockEnd');
    });
    this.blockTable.add(record);
    const block = { record, begin: begin.ownedBy(record.handle), end: end.ownedBy(record.handle), entities: [] };
    this.content.push(block);
    return block;
  }

  private addLayersOf(scale: number): void {
    this.lineTypes = {};
    for (const name of ['ByBlock', 'ByLayer', 'Continuous']) this.addLineType(name, '', []);
    this.layers = { '0': layerRecord('0', 'Continuous', 0.25) };
    for (const { name, weightMm, line } of LAYERS) {
      const dashes = dashesOf(line, weightMm).map((d) => d * scale);
      const lineType = LINE_TYPES[line];
      // One type has one length of dash in a file, hence one weight.
      if (!(lineType in this.lineTypes)) this.addLineType(lineType, line, dashes);
      this.layers[name] = layerRecord(name, lineType, weightMm);
    }
  }

  private addStyles({ writings }: DrawingFrame): void {
    const style = new TextStyle(TEXT_STYLE);
    style.fontFileName = 'DejaVuSans.ttf';
    this.tables.STYLE?.add(style);
    const records = new Map(writings.map((writing) => [dimStyleName(writing), writing]));
    for (const writing of records.values()) this.tables.DIMSTYLE?.add(dimStyleRecord(writing, style.handle));
  }

  private addHeaders({ bounds: { min, max }, writings }: DrawingFrame): void {
    this.setUnits('Millimeters');
    this.header('MEASUREMENT', [[70, 1]]);
    this.header('EXTMIN', corner(min));
    this.header('EXTMAX', corner(max));
    this.header('LTSCALE', [[40, 1]]);
    this.header('LWDISPLAY', [[290, 1]]);
    this.header('TEXTSTYLE', [[7, TEXT_STYLE]]);
    for (const [name, code, value] of dimHeaders(writings[0])) this.header(name, [[code, value]]);
    const viewports = this.tables.VPORT;
    if (viewports) viewports.elements = [];
    viewports?.add(wholeView(min, max));
  }

  /** The file. */
  written(): Uint8Array {
    return this._tagsManager().written();
  }

  override _tagsManager(): GuardedTags {
    const tags = new GuardedTags();
    const tables = [this._ltypeTable(), this._layerTable(), ...Object.values(this.tables), this.blockTable];
    tags.start('HEADER');
    // The version comes first, by which readers know the encoding.
    const { ACADVER = [[1, 'AC1021'] as const], ...others } = this.headers;
    tags.addHeaderVariable('ACADVER', ACADVER);
    tags.addHeaderVariable('HANDSEED', [[5, Handle.peek()]]);
    for (const [name, values] of Object.entries(others)) tags.addHeaderVariable(name, values);
    tags.end();
    tags.start('CLASSES');
    tags.end();
    tags.start('TABLES');
    for (const table of tables) table.tags(tags);
    tags.end();
    tags.start('BLOCKS');
    for (const block of this.content) {
      block.begin.tags(tags);
      if (block !== this.model) for (const entity of block.entities) entity.tags(tags);
      block.end.tags(tags);
    }
    tags.end();
    tags.start('ENTITIES');
    for (const entity of this.model.entities) entity.tags(tags);
    tags.end();
    tags.start('OBJECTS');
    this.dictionary.tags(tags);
    tags.end();
    tags.push(0, 'EOF');
    return tags;
  }
}

const corner = ([x, y]: Vec2): [number, number][] => [
  [10, x],
  [20, y],
  [30, 0],
];

const layerRecord = (name: string, lineType: string, weightMm: number): DxfObject =>
  tableRecord('LAYER', 'AcDbLayerTableRecord', (tags) => {
    tags.push(2, name);
    tags.push(70, 0);
    tags.push(62, BLACK_OR_WHITE);
    tags.push(6, lineType);
    tags.push(370, weightCode(weightMm));
    tags.push(390, NO_HANDLE);
  });

/** The window in which a reader opens the file: all of the view, with a little room round it. */
function wholeView(min: Vec2, max: Vec2): DxfObject {
  const [width, height] = [Math.max(max[0] - min[0], 1), Math.max(max[1] - min[1], 1)];
  const aspect = 1.5;
  return tableRecord('VPORT', 'AcDbViewportTableRecord', (tags) => {
    tags.push(2, '*ACTIVE');
    tags.push(70, 0);
    tags.push(10, 0);
    tags.push(20, 0);
    tags.push(11, 1);
    tags.push(21, 1);
    tags.push(12, (min[0] + max[0]) / 2);
    tags.push(22, (min[1] + max[1]) / 2);
    tags.push(40, 1.05 * Math.max(height, width / aspect));
    tags.push(41, aspect);
  });
}
