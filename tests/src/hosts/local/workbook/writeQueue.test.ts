import { createWriteQueue } from "../../../../../src/hosts/local/workbook/writeQueue";

/** Work that runs until the test ends it. */
const work = <Result>(result: Result) => {
  let end = (): void => undefined;
  const running = new Promise<Result>((resolve) => {
    end = () => {
      resolve(result);
    };
  });
  return { running, end };
};

const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe("a write to a workbook", () => {
  it("is waited for, even if a shorter one is undone meanwhile", async () => {
    const writes = createWriteQueue();
    const undo = await writes.add(Promise.resolve(() => Promise.resolve()));
    const long = work(() => Promise.resolve());
    void writes.add(long.running);
    let isDone = false;
    const done = writes.idle().then(() => (isDone = true));
    await undo();
    await nextTask();
    expect(isDone).toBe(false);
    long.end();
    await done;
  });

  it("is waited for if another fails, and if its Undo begins during the wait", async () => {
    const writes = createWriteQueue();
    const long = work(undefined);
    const undo = await writes.add(Promise.resolve(() => long.running));
    const failed = writes.add(Promise.reject(new Error("The workbook rejected the cells.")));
    let isDone = false;
    const done = writes.idle().then(() => (isDone = true));
    void undo();
    await expect(failed).rejects.toThrow("rejected");
    await nextTask();
    expect(isDone).toBe(false);
    long.end();
    await done;
  });

  it("can't be undone once another workbook is open", async () => {
    const writes = createWriteQueue();
    let undone = 0;
    const undo = await writes.add(Promise.resolve(() => Promise.resolve(void undone++)));
    writes.close();
    await expect(undo()).rejects.toThrow("That workbook is no longer open here. Nothing was undone.");
    expect(undone).toBe(0);
  });
});
