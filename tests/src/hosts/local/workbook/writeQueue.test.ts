import { createWriteQueue } from "../../../../../src/hosts/local/workbook/writeQueue";

/** Something that goes on until it is told to end. */
const work = <Result>(result: Result) => {
  let end = (): void => undefined;
  const going = new Promise<Result>((resolve) => {
    end = () => {
      resolve(result);
    };
  });
  return { going, end };
};

const nextTask = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe("what is written to a workbook", () => {
  it("is waited for, though something shorter is taken back meanwhile", async () => {
    const writes = createWriteQueue();
    const undo = await writes.add(Promise.resolve(() => Promise.resolve()));
    const long = work(() => Promise.resolve());
    void writes.add(long.going);
    let isDone = false;
    const done = writes.idle().then(() => (isDone = true));
    await undo();
    await nextTask();
    expect(isDone).toBe(false);
    long.end();
    await done;
  });

  it("is waited for where it fails, and where its Undo begins while somebody waits", async () => {
    const writes = createWriteQueue();
    const long = work(undefined);
    const undo = await writes.add(Promise.resolve(() => long.going));
    const failed = writes.add(Promise.reject(new Error("The workbook didn't take the cells.")));
    let isDone = false;
    const done = writes.idle().then(() => (isDone = true));
    void undo();
    await expect(failed).rejects.toThrow("didn't take");
    await nextTask();
    expect(isDone).toBe(false);
    long.end();
    await done;
  });

  it("can't be taken back once another workbook is open", async () => {
    const writes = createWriteQueue();
    let undone = 0;
    const undo = await writes.add(Promise.resolve(() => Promise.resolve(void undone++)));
    writes.close();
    await expect(undo()).rejects.toThrow("That workbook is no longer open here. Nothing was undone.");
    expect(undone).toBe(0);
  });
});
