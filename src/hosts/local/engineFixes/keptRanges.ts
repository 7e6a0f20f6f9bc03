import type { IUnitRange } from "@univerjs/core";
import {
  FormulaDependencyGenerator,
  type BaseAstNode,
  type IFormulaCurrentConfigService,
} from "@univerjs/engine-formula";

/** A formula as the engine's dependency generator sees it. */
interface FormulaTree {
  readonly unitId: string;
  readonly subUnitId: string;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
  readonly refOffsetX: number;
  readonly refOffsetY: number;
  readonly formula: string;
  /** Only of formulas outside cells. */
  readonly formulaId?: string;
  readonly featureId?: string;
  readonly isVirtual: boolean;
  readonly isCache: boolean;
  isDirty: boolean;
  addressFunctionNodes: unknown[];
  pushRangeList(ranges: readonly IUnitRange[]): void;
}

/** The members of the engine's dependency generator that the fix uses, private ones included. */
interface Generator {
  readonly _currentConfigService: IFormulaCurrentConfigService;
  readonly _runtimeService: {
    setCurrent(
      row: number,
      column: number,
      rows: number,
      columns: number,
      sheetId: string,
      unitId: string,
    ): void;
  };
  readonly _dependencyManagerService: {
    reset(): void;
    addDependencyRTreeCache(tree: FormulaTree): void;
  };
  readonly _executedAddressFunctionNodeIds: Set<number>;
  _registerFormulas(unitIds: readonly string[], formulas: object, units: object, trees: FormulaTree[]): void;
  _registerOtherFormulas(formulas: object, unitIds: readonly string[], trees: FormulaTree[]): void;
  _registerFeatureFormulas(trees: FormulaTree[]): void;
  _getTreeNode(tree: FormulaTree): BaseAstNode;
  _includeTree(tree: FormulaTree, node: BaseAstNode | undefined): boolean;
  _getAddressFunctionNodeList(node: BaseAstNode): unknown[];
  _getRangeListByNode(data: {
    node: BaseAstNode;
    refOffsetX: number;
    refOffsetY: number;
  }): Promise<IUnitRange[]>;
  _calculateListByFunctionRefNode(trees: readonly FormulaTree[]): Promise<void>;
  _generateTreeList(formulas: object, otherFormulas: object, units: object): Promise<FormulaTree[]>;
}

interface Kept {
  readonly formula: string;
  readonly ranges: readonly IUnitRange[];
}

interface KeptRanges {
  /** Sheet names and sizes, which decide what a reference means. */
  readonly structure: string;
  /** By cell. */
  readonly byCell: Map<string, Kept>;
}

const keptByGenerator = new WeakMap<Generator, KeptRanges>();

const structureOf = (config: IFormulaCurrentConfigService): string =>
  JSON.stringify([
    config.getSheetNameMap(),
    Object.entries(config.getUnitData()).map(([unitId, sheets]) => [
      unitId,
      Object.entries(sheets ?? {}).map(([sheetId, sheet]) => [sheetId, sheet?.rowCount, sheet?.columnCount]),
    ]),
  ]);

/** What earlier calculations kept; nothing when something has changed that may give a formula other ranges. */
const keptBy = (generator: Generator): Map<string, Kept> => {
  const config = generator._currentConfigService;
  const structure = structureOf(config);
  const kept = keptByGenerator.get(generator);
  const isSameMeaning =
    kept?.structure === structure &&
    [config.getDirtyNameMap(), config.getDirtyDefinedNameMap(), config.getDirtySuperTableMap()].every(
      (dirty: object | undefined) => Object.keys(dirty ?? {}).length === 0,
    );
  if (isSameMeaning) return kept.byCell;
  const byCell = new Map<string, Kept>();
  keptByGenerator.set(generator, { structure, byCell });
  return byCell;
};

const QUOTED = /"[^"]*"|'[^']*'/g;
/** Words other than functions, sheets, cells and truth values: defined names, tables, and columns or rows as ranges. */
const NAME = /(?<![\w.$])(?!(?:\$?[A-Z]{1,3}\$?\d+|TRUE|FALSE)(?![\w.]))[A-Z_\\][\w.\\]*(?![\w.\\]*[(!])/iu;
/** Spills, implicit intersections, tables, other workbooks and array literals. */
const SPECIAL = /[#@[\]{}\\]|[^\u0020-\u007f]/u;

/** The engine's numbers for references, values, operators, functions, the root, and signs before or after. */
const PLAIN_NODES: ReadonlySet<number> = new Set([1, 2, 3, 4, 9, 11, 12]);

const isPlainNode = (node: BaseAstNode): boolean =>
  PLAIN_NODES.has(node.nodeType) &&
  !node.isAddress() &&
  !node.isForcedCalculateFunction() &&
  node.getChildren().every(isPlainNode);

/** Whether a formula's text and the workbook's structure alone decide which ranges it reads. */
const readsFixedRanges = (formula: string, node: BaseAstNode): boolean => {
  const text = formula.replace(QUOTED, (quoted) => (quoted.startsWith("'") ? "S" : "0"));
  return !SPECIAL.test(text) && !NAME.test(text) && isPlainNode(node);
};

const addRanges = async (generator: Generator, tree: FormulaTree, kept: Map<string, Kept>): Promise<void> => {
  // Formulas outside cells may have any ranges.
  const isInCell = !tree.isVirtual && tree.formulaId === undefined && tree.featureId === undefined;
  const cell = isInCell ? `${tree.unitId}!${tree.subUnitId}!${tree.row}!${tree.column}` : "";
  const before = isInCell ? kept.get(cell) : undefined;
  if (before?.formula === tree.formula) {
    tree.isDirty = generator._includeTree(tree, undefined);
    // An edit made just as the calculation starts must be reported to the engine before the ranges are registered. So this takes as
    // many steps as the engine's own way: one for each range.
    for (const range of before.ranges) tree.pushRangeList([await Promise.resolve(range)]);
    return;
  }
  const node = generator._getTreeNode(tree);
  tree.isDirty = generator._includeTree(tree, node);
  const addressFunctions = generator._getAddressFunctionNodeList(node);
  if (addressFunctions.length > 0) tree.addressFunctionNodes = addressFunctions;
  if (tree.isVirtual) return;
  generator._runtimeService.setCurrent(
    tree.row,
    tree.column,
    tree.rowCount,
    tree.columnCount,
    tree.subUnitId,
    tree.unitId,
  );
  const { refOffsetX, refOffsetY } = tree;
  const ranges = await generator._getRangeListByNode({ node, refOffsetX, refOffsetY });
  tree.pushRangeList(ranges);
  if (isInCell && readsFixedRanges(tree.formula, node)) kept.set(cell, { formula: tree.formula, ranges });
  else kept.delete(cell);
};

/**
 * At every calculation the engine parses each formula of the workbook and evaluates its references, to know which ranges it reads: in
 * a book of 240,000 formulas, ten seconds for an edit of one cell. With the fix, the ranges of a formula are kept while its text, its
 * cell and the workbook's structure stay as they are. Formulas with names, tables, spills or functions such as OFFSET, whose ranges
 * depend on more, go the engine's way. Lasts for the life of the page or process; a second call changes nothing.
 */
export const keepRanges = (): void => {
  Object.assign(FormulaDependencyGenerator.prototype as unknown as Generator, {
    async _generateTreeList(
      this: Generator,
      formulas: object,
      otherFormulas: object,
      units: object,
    ): Promise<FormulaTree[]> {
      const manager = this._dependencyManagerService;
      const trees: FormulaTree[] = [];
      if (this._currentConfigService.isForceCalculate()) manager.reset();
      this._registerFormulas(Object.keys(formulas), formulas, units, trees);
      this._registerOtherFormulas(otherFormulas, Object.keys(otherFormulas), trees);
      this._registerFeatureFormulas(trees);
      const kept = keptBy(this);
      for (const tree of trees) if (tree.formula) await addRanges(this, tree, kept);
      for (const tree of trees) if (!tree.isCache) manager.addDependencyRTreeCache(tree);
      this._executedAddressFunctionNodeIds.clear();
      // The engine first puts every formula in a tree, for those few that need it.
      if (trees.some(({ addressFunctionNodes }) => addressFunctionNodes.length > 0))
        await this._calculateListByFunctionRefNode(trees);
      return trees;
    },
  } satisfies Partial<Generator>);
};
