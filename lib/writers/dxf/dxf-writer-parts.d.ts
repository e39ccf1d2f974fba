// The library's own types leave out the inner classes that a subclass needs.

declare module 'dxf-writer/src/Handle.js' {
  const Handle: { seed: number; next(): string; peek(): string };
  export default Handle;
}

declare module 'dxf-writer/src/TagsManager.js' {
  export default class TagsManager {
    lines: (string | number)[];
    push(code: number, value: string | number): void;
    point(x: number, y: number, z?: number): void;
    start(section: string): void;
    end(): void;
    addHeaderVariable(name: string, values: readonly (readonly [number, string | number])[]): void;
    toDxfString(): string;
  }
}

declare module 'dxf-writer/src/DatabaseObject.js' {
  import type TagsManager from 'dxf-writer/src/TagsManager.js';
  export default class DatabaseObject {
    constructor(subclass?: string | readonly string[] | null);
    handle: string;
    ownerObjectHandle: string;
    subclassMarkers: string[];
    tags(manager: TagsManager): void;
  }
}

declare module 'dxf-writer/src/Table.js' {
  import DatabaseObject from 'dxf-writer/src/DatabaseObject.js';
  export default class Table extends DatabaseObject {
    constructor(name: string);
    name: string;
    elements: DatabaseObject[];
    add(element: DatabaseObject): void;
  }
}

declare module 'dxf-writer/src/TextStyle.js' {
  import DatabaseObject from 'dxf-writer/src/DatabaseObject.js';
  export default class TextStyle extends DatabaseObject {
    constructor(name: string);
    fontFileName: string;
  }
}

declare module 'dxf-writer/src/Drawing.js' {
  import type DatabaseObject from 'dxf-writer/src/DatabaseObject.js';
  import type Table from 'dxf-writer/src/Table.js';
  import type TagsManager from 'dxf-writer/src/TagsManager.js';
  export default class Drawing {
    static UNITS: Readonly<Record<'Millimeters', number>>;
    layers: Record<string, DatabaseObject>;
    lineTypes: Record<string, DatabaseObject>;
    headers: Record<string, readonly (readonly [number, string | number])[]>;
    tables: Record<string, Table>;
    dictionary: DatabaseObject;
    addLineType(name: string, description: string, elements: readonly number[]): this;
    header(name: string, values: readonly (readonly [number, string | number])[]): this;
    setUnits(unit: 'Millimeters'): this;
    toDxfString(): string;
    _ltypeTable(): Table;
    _layerTable(): Table;
    _tagsManager(): TagsManager;
  }
}
