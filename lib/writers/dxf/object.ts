import DatabaseObject from 'dxf-writer/src/DatabaseObject.js';
import type TagsManager from 'dxf-writer/src/TagsManager.js';
import type { Tag } from './tags.js';

/** Tags under one subclass marker. */
export type Part = readonly [marker: string, tags: readonly Tag[]];

/**
 * Any object of the file: type, handle, owner, then its parts each under its subclass marker.
 * The library's own entities put the layer under the wrong marker and know no weight, text style or block.
 */
export class DxfObject extends DatabaseObject {
  constructor(
    readonly type: string,
    readonly parts: readonly Part[],
    private readonly handleCode = 5,
  ) {
    super();
  }

  ownedBy(owner: string): this {
    this.ownerObjectHandle = owner;
    return this;
  }

  override tags(manager: TagsManager): void {
    manager.push(0, this.type);
    manager.push(this.handleCode, this.handle);
    manager.push(330, this.ownerObjectHandle);
    for (const [marker, tags] of this.parts) {
      manager.push(100, marker);
      for (const [code, value] of tags) manager.push(code, value);
    }
  }
}

/** Record of a symbol table (layer, style, block record ...). */
export const tableRecord = (type: string, marker: string, tags: readonly Tag[], handleCode = 5): DxfObject =>
  new DxfObject(
    type,
    [
      ['AcDbSymbolTableRecord', []],
      [marker, tags],
    ],
    handleCode,
  );
