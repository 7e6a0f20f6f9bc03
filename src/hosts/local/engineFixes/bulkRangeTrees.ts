import { RTree } from "@univerjs/core";
import RBush from "rbush";

type Tree = ReturnType<RTree["getTree"]>;
type Item = Parameters<Tree["insert"]>[0];

/** The members of the engine's range tree that the fix uses, private ones included. */
interface RangeTree {
  readonly _tree: Map<string, Map<string, Tree>>;
  getTree(unitId: string, sheetId: string): Tree;
}

/** `load` inserts so few items one by one. */
const FEWEST_TO_LOAD = 4;

/** Keeps new items aside until somebody searches, and then adds them all at once. */
class BulkTree extends RBush<Item> {
  private waiting: Item[] = [];

  override insert(item: Item): this {
    this.waiting.push(item);
    return this;
  }

  private addWaiting(): void {
    const items = this.waiting;
    this.waiting = [];
    if (items.length < FEWEST_TO_LOAD) for (const item of items) super.insert(item);
    else this.load(items);
  }

  override search(area: Parameters<RBush<Item>["search"]>[0]): Item[] {
    this.addWaiting();
    return super.search(area);
  }

  override all(): Item[] {
    this.addWaiting();
    return super.all();
  }

  override toJSON(): unknown {
    this.addWaiting();
    return super.toJSON();
  }

  override remove(item: Item): this {
    this.addWaiting();
    super.remove(item);
    return this;
  }
}

/**
 * The engine looks up which formulas read a cell in a tree of ranges, and adds every range singly, which took an eighth of all
 * calculation time; some of its trees are filled and never searched. With the fix, ranges are added in bulk at the first search. Lasts
 * for the life of the page or process; a second call changes nothing.
 */
export const addRangesInBulk = (): void => {
  Object.assign(RTree.prototype as unknown as RangeTree, {
    getTree(this: RangeTree, unitId: string, sheetId: string): Tree {
      const sheets = this._tree.get(unitId) ?? new Map<string, Tree>();
      this._tree.set(unitId, sheets);
      const tree = sheets.get(sheetId) ?? new BulkTree();
      sheets.set(sheetId, tree);
      return tree;
    },
  } satisfies Partial<RangeTree>);
};
