import DatabaseObject from 'dxf-writer/src/DatabaseObject.js';
import type TagsManager from 'dxf-writer/src/TagsManager.js';
import type { GuardedTags } from './tags.js';

/** Writes what tells an object from others of its type: its tags, each part under its subclass marker (100). */
export type Content = (tags: GuardedTags) => void;

/**
 * Any object of the file: type, handle, owner, then what it holds.
 * The library's own entities put the layer under the wrong marker and know no weight, text style or block.
 */
export class DxfObject extends DatabaseObject {
  constructor(
    readonly type: string,
    private readonly content: Content,
    private readonly handleCode = 5,
  ) {
    super();
  }

  ownedBy(owner: string): this {
    this.ownerObjectHandle = owner;
    return this;
  }

  override tags(manager: TagsManager): void {
    const tags = manager as GuardedTags;
    tags.push(0, this.type);
    tags.push(this.handleCode, this.handle);
    tags.push(330, this.ownerObjectHandle);
    this.content(tags);
  }
}

/** Record of a symbol table (layer, style, block record ...). */
export const tableRecord = (type: string, marker: string, content: Content, handleCode = 5): DxfObject =>
  new DxfObject(
    type,
    (tags) => {
      tags.push(100, 'AcDbSymbolTableRecord');
      tags.push(100, marker);
      content(tags);
    },
    handleCode,
  );
