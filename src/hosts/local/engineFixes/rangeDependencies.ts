import { DependencyManagerService, type IFormulaDependencyTree } from "@univerjs/engine-formula";

type TreeId = IFormulaDependencyTree["treeId"];

/** What the engine's keeper of dependencies does, some of it for itself only. */
interface Keeper {
  readonly _allTreeMap: ReadonlyMap<TreeId, unknown>;
  addDependencyRTreeCache(tree: IFormulaDependencyTree): void;
  reset(): void;
  _removeDependencyRTreeCache(treeId: TreeId): void;
  _removeDependencyRTreeCacheById(unitId: string, sheetId: string): void;
  _removeAllTreeMap(treeId: TreeId): void;
}

/** Which ranges each formula was last said to read, as text. */
type Said = Map<TreeId, string>;

const saidTo = new WeakMap<Keeper, Said>();
const saidOf = (keeper: Keeper): Said => {
  const said = saidTo.get(keeper) ?? new Map<TreeId, string>();
  saidTo.set(keeper, said);
  return said;
};

const rangesOf = ({ rangeList }: IFormulaDependencyTree): string =>
  rangeList
    .map(
      ({ unitId, sheetId, range: { startRow, startColumn, endRow, endColumn } }) =>
        `${unitId}!${sheetId}!${startRow}:${startColumn}:${endRow}:${endColumn}`,
    )
    .join("\n");

let isMended = false;

/**
 * At every calculation the engine notes again which ranges every formula reads, and forgets none that it noted before: a page grew
 * by 0.2 MB an edit on the worked example, and each search took longer. A formula that reads what it read isn't noted again; one
 * that reads something else is forgotten first. Lasts for the life of the page or process; a second call changes nothing.
 */
export const noteRangesOnce = (): void => {
  if (isMended) return;
  isMended = true;
  const keeper = DependencyManagerService.prototype as unknown as Keeper;
  const { addDependencyRTreeCache, reset, _removeDependencyRTreeCacheById, _removeAllTreeMap } = keeper;
  Object.assign(keeper, {
    addDependencyRTreeCache(this: Keeper, tree: IFormulaDependencyTree) {
      const said = saidOf(this);
      const ranges = rangesOf(tree);
      if (said.get(tree.treeId) === ranges) return;
      if (this._allTreeMap.has(tree.treeId)) {
        this._removeDependencyRTreeCache(tree.treeId);
        this._removeAllTreeMap(tree.treeId);
      }
      addDependencyRTreeCache.call(this, tree);
      said.set(tree.treeId, ranges);
    },
    reset(this: Keeper) {
      saidOf(this).clear();
      reset.call(this);
    },
    // All that was noted of a sheet goes, whichever formulas read it.
    _removeDependencyRTreeCacheById(this: Keeper, unitId: string, sheetId: string) {
      saidOf(this).clear();
      _removeDependencyRTreeCacheById.call(this, unitId, sheetId);
    },
    _removeAllTreeMap(this: Keeper, treeId: TreeId) {
      saidOf(this).delete(treeId);
      _removeAllTreeMap.call(this, treeId);
    },
  } satisfies Partial<Keeper>);
};
