/**
 * ringcourse: cast-block dome houses from one description.
 * Every stage can be used alone: read, set out, lay blocks, make solids, draw, write.
 */

export type { Check, CheckState, Figure } from './base/figures.js';
export { Memory } from './base/memory.js';
export { DescriptionError, type Problem, type Where } from './base/problems.js';
export { nearest } from './base/suggest.js';
export { CAUTIONS } from './base/texts/cautions.js';
export { CODES, type CodeDoc, type ProblemCode } from './base/texts/problem-codes.js';
export {
  type BlockChanges,
  type CheckChange,
  type Comparison,
  type CostChange,
  compareHouses,
  type MouldChanges,
} from './deliver/compare.js';
export { comparisonTables } from './deliver/compare-tables.js';
export { type DrawnGroup, drawHouse } from './deliver/drawn.js';
export type { DrawnSet, PackageFile } from './deliver/file.js';
export { OUTPUT_GROUPS, type OutputGroup } from './deliver/groups.js';
export { type HouseFigures, houseFigures, type WorstCheck } from './deliver/house-figures.js';
export {
  buildPackage,
  checkHouse,
  type HousePackage,
  houseTable,
  houseTables,
  type PackageOptions,
  type Tools,
  type Verdict,
} from './deliver/package.js';
export { type HousePictureOptions, housePicture } from './deliver/picture.js';
export { TABLES, type TableEntry } from './deliver/tables.js';
export { type Variant, type VariantResult, variantsOf, varyOne } from './deliver/vary.js';
export { variantTable } from './deliver/vary-table.js';
export {
  type DomeSettings,
  describeHouse,
  HouseBuilder,
  type HouseSettings,
  type NicheSettings,
  type OpeningSettings,
  type PassageSettings,
  type RoomSettings,
} from './description/builder.js';
export type { House, LengthUnit } from './description/house.js';
export { descriptionJsonSchema } from './description/json-schema.js';
export { descriptionUnits, houseFrom, type ReadOptions, readDescription } from './description/read.js';
export type { Description } from './description/schema.js';
export {
  STARTER,
  STARTER_QUESTIONS,
  type StarterAnswers,
  type StarterQuestion,
  starterDescription,
} from './description/starter.js';
export type { Primitive, View } from './documents/drawing.js';
export { fromGeom3, toGeom3 } from './documents/geom3.js';
export type { Mesh } from './documents/mesh.js';
export { auditMesh } from './documents/mesh-audit.js';
export { meshBounds, meshEuler, meshVolume } from './documents/mesh-measure.js';
export type { Facts, Group, Instance, Material, Placement, Scene, SceneNode } from './documents/scene.js';
export { auditSheet, type PlacedView, type Sheet } from './documents/sheet.js';
export type { Cell, Column, Table } from './documents/table.js';
export { elevationView } from './drawings/elevation.js';
export type { HandedOver } from './drawings/handed.js';
export { houseViews } from './drawings/house-views.js';
export { planView } from './drawings/plan.js';
export { sectionView } from './drawings/section.js';
export { beginSheets, houseSheets, type SheetSet } from './drawings/sheets/house-sheets.js';
export { thrustViews } from './drawings/thrust-section.js';
export { dwellingChecks } from './dwelling/checks.js';
export { type Dwelling, dwellingOf } from './dwelling/dwelling.js';
export type { OpeningSizes } from './dwelling/opening-sizes.js';
export type { RoomSizes } from './dwelling/rooms.js';
export type { ArchPiece, ArchPieceKind } from './masonry/arch-pieces.js';
export { type Balance, balanceOf } from './masonry/balance.js';
export type { Block, LaidBlock, LaidHouse, Sliver } from './masonry/block.js';
export { type CastPieces, castPieces } from './masonry/cast-pieces.js';
export { type BlockDimensions, blockCentroid, blockDimensions, type Edge } from './masonry/dimensions.js';
export { layBlocks } from './masonry/lay.js';
export { type MouldDimensions, mouldDimensions } from './masonry/moulds/dimensions.js';
export type { Effort } from './masonry/moulds/mix-search.js';
export type { CourseMould, MouldSchedule, NamedMould } from './masonry/moulds/schedule.js';
export { type PlacedBlock, placedBlock } from './masonry/placed.js';
export { type MasonryPlan, planMasonry } from './masonry/plan.js';
export type { RingPiece, RingPieceKind } from './masonry/ring-pieces.js';
export { type TradeOff, tradeOffs } from './masonry/trade-off.js';
export { looseBlocks } from './models/print/loose.js';
export { type Planned, type PrintPlan, planPrint, workableScale } from './models/print/plan.js';
export { type PrintModel, type PrintPart, printModel } from './models/print/print-model.js';
export { plateScenes } from './models/print/scenes.js';
export type { ArchSetout } from './setout/arch.js';
export type { Course } from './setout/courses.js';
export type { DomeSetout } from './setout/dome.js';
export { type HouseSetout, setOutHouse } from './setout/house.js';
export { blockSolids } from './solids/block-solids.js';
export { houseSolids } from './solids/house-solids.js';
export { type Kernel, type KernelSource, loadKernel } from './solids/kernel.js';
export { pieceSolids } from './solids/piece-solids.js';
export { layingChecks } from './statics/checks/laying.js';
export { staticsChecks } from './statics/checks.js';
export { type CourseLaying, layingOf } from './statics/laying-courses.js';
export type { DomeStatics, HeadStatics, Statics } from './statics/results.js';
export { staticsOf } from './statics/statics.js';
export { blockTable } from './tables/blocks.js';
export { bondTable } from './tables/bonds.js';
export { courseTable } from './tables/courses.js';
export { cutTable } from './tables/cuts.js';
export { layingTable } from './tables/laying.js';
export { longMouldTable, mouldTable } from './tables/moulds.js';
export { openingTable } from './tables/openings.js';
export { remnantTable } from './tables/remnants.js';
export { ringPieceTable } from './tables/ring-pieces.js';
export { structuralCheckTable, structureTable } from './tables/structure.js';
export { volumeTable } from './tables/volumes.js';
export { voussoirTable } from './tables/voussoirs.js';
export { type Bill, billOf, PRICE_ITEMS } from './works/bill.js';
export { type Calendar, calendarOf, type MouldOf } from './works/calendar.js';
export { type Centre, centresOf } from './works/centering.js';
export { amountsFor, correctFoam, type FoamCorrection, type MixAmounts } from './works/mix.js';
export { poleSettings, type Setting } from './works/radius-pole.js';
export { type Warmth, warmthOf } from './works/warmth.js';
export { type Works, type WorksOptions, worksChecks, worksOf } from './works/works.js';
export { writeCsv } from './writers/csv.js';
export { writeDxf, writeDxfSheet } from './writers/dxf.js';
export { writeGlb } from './writers/glb.js';
export { type PageSource, writeModelPage } from './writers/html-model.js';
export { type PdfInfo, type PdfSource, writePdf } from './writers/pdf.js';
export { type PictureOptions, writePicture } from './writers/picture.js';
export { auditStl, writeStl } from './writers/stl.js';
export { writeSvg, writeSvgSheet } from './writers/svg.js';
export { type ThreeMfOptions, writeThreeMf } from './writers/threemf.js';
export { writeXlsx } from './writers/xlsx.js';
