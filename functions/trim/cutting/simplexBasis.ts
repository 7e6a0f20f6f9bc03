/** A sparse column of the linear program: its cost, the rows it has pieces of, and how many of each. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly times: readonly number[];
}

const TINY = 1e-9;

/**
 * A basis of the revised simplex method, with its inverse, for the linear program "cover the demand for every piece at
 * the least cost". It starts with one homogeneous column per row.
 */
export class Basis<C extends Column> {
  readonly columns: C[];
  /** The value of each basic variable: how often its column is used. */
  readonly amounts: Float64Array;
  /** The dual value of each row: the cost of one more piece. */
  readonly duals: Float64Array;
  private readonly inverse: Float64Array[];
  private readonly direction: Float64Array;

  constructor(columns: readonly C[], demands: readonly number[]) {
    const size = columns.length;
    this.columns = [...columns];
    const times = columns.map((column) => column.times[0] ?? 1);
    this.amounts = Float64Array.from(demands, (demand, row) => demand / (times[row] ?? 1));
    this.duals = Float64Array.from(columns, ({ cost }, row) => cost / (times[row] ?? 1));
    this.direction = new Float64Array(size);
    this.inverse = times.map((each, row) => {
      const line = new Float64Array(size);
      line[row] = 1 / each;
      return line;
    });
  }

  get cost(): number {
    return this.columns.reduce((sum, { cost }, index) => sum + cost * (this.amounts[index] ?? 0), 0);
  }

  valueOf({ rows, times }: Column): number {
    let value = 0;
    for (let i = 0; i < rows.length; i++)
      value += (times[i] as number) * (this.duals[rows[i] as number] as number);
    return value;
  }

  /** Brings a column in for the one that it drives to 0 first. False where it drives none to 0. */
  enter(column: C): boolean {
    const gain = this.valueOf(column) - column.cost;
    const leaving = this.leavingRow(column);
    if (leaving < 0) return false;
    const line = this.inverse[leaving] as Float64Array;
    const pivot = this.direction[leaving] as number;
    const step = (this.amounts[leaving] as number) / pivot;
    for (let row = 0; row < line.length; row++) {
      const each = (line[row] as number) / pivot;
      line[row] = each;
      this.duals[row] = (this.duals[row] as number) - gain * each;
    }
    for (let index = 0; index < line.length; index++) {
      const factor = this.direction[index] as number;
      if (index === leaving || factor === 0) continue;
      subtract(this.inverse[index] as Float64Array, line, factor);
      this.amounts[index] = Math.max(0, (this.amounts[index] as number) - factor * step);
    }
    this.amounts[leaving] = step;
    this.columns[leaving] = column;
    return true;
  }

  /** The ratio test; ties go to the largest pivot. */
  private leavingRow({ rows, times }: Column): number {
    let leaving = -1;
    let least = Infinity;
    for (let index = 0; index < this.inverse.length; index++) {
      const line = this.inverse[index] as Float64Array;
      let each = 0;
      for (let i = 0; i < rows.length; i++)
        each += (times[i] as number) * (line[rows[i] as number] as number);
      this.direction[index] = each;
      if (each <= TINY) continue;
      const ratio = (this.amounts[index] as number) / each;
      const isTie = ratio <= least + TINY && each > (this.direction[leaving] ?? 0);
      if (ratio < least - TINY || isTie) [leaving, least] = [index, ratio];
    }
    return leaving;
  }
}

const subtract = (from: Float64Array, line: Float64Array, factor: number): void => {
  for (let row = 0; row < line.length; row++)
    from[row] = (from[row] as number) - factor * (line[row] as number);
};
