/** A column of the linear program: what it costs, and how many of which row's piece it holds. */
export interface Column {
  readonly cost: number;
  readonly rows: readonly number[];
  readonly times: readonly number[];
}

const TINY = 1e-9;

/**
 * A basis of the linear program "at least so many of every piece, at the least cost", with its inverse. It begins
 * with one column for each row, which holds that row's piece alone.
 */
export class Basis<C extends Column> {
  readonly columns: C[];
  /** How often each column of the basis is used. */
  readonly amounts: Float64Array;
  /** What one more piece of each row would cost. */
  readonly worths: Float64Array;
  private readonly inverse: Float64Array[];
  private readonly direction: Float64Array;

  constructor(columns: readonly C[], demands: readonly number[]) {
    const size = columns.length;
    this.columns = [...columns];
    const times = columns.map((column) => column.times[0] ?? 1);
    this.amounts = Float64Array.from(demands, (demand, row) => demand / (times[row] ?? 1));
    this.worths = Float64Array.from(columns, ({ cost }, row) => cost / (times[row] ?? 1));
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

  worthOf({ rows, times }: Column): number {
    let worth = 0;
    for (let i = 0; i < rows.length; i++)
      worth += (times[i] as number) * (this.worths[rows[i] as number] as number);
    return worth;
  }

  /** Brings a column in, in place of the one that it drives to 0 first. False where there is none such. */
  enter(column: C): boolean {
    const gain = this.worthOf(column) - column.cost;
    const leaving = this.leavingFor(column);
    if (leaving < 0) return false;
    const line = this.inverse[leaving] as Float64Array;
    const pivot = this.direction[leaving] as number;
    const step = (this.amounts[leaving] as number) / pivot;
    for (let row = 0; row < line.length; row++) {
      const each = (line[row] as number) / pivot;
      line[row] = each;
      this.worths[row] = (this.worths[row] as number) - gain * each;
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

  private leavingFor({ rows, times }: Column): number {
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
