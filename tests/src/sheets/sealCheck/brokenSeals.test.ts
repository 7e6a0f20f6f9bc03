import { brokenSeals } from "../../../../src/sheets/sealCheck/brokenSeals";
import { addressBeside } from "../../../support/bid";
import { changedOrder, issue } from "../../../support/changedOrder";

test("a workbook as it was sealed says nothing; edited, which sheets aren't what was signed or issued", async () => {
  const bid = await changedOrder(["panels", 10, 5]);
  await issue(bid, "Change order 1");
  const broken = async (): Promise<string[]> => brokenSeals(await bid.host.contents());
  expect(await broken()).toEqual([]);

  bid.type("Change order 1", await addressBeside(bid, "Change order 1", "panels", 13), 5);
  expect(await broken()).toEqual(['"Change order 1" isn\'t as it was issued.']);

  for (const signed of ["Signed 1", "Signed 2"])
    bid.type(signed, await addressBeside(bid, signed, "panels", 6), 7);
  expect(await broken()).toEqual([
    '"Signed 1" and "Signed 2" were edited since they were signed.',
    '"Change order 1" isn\'t as it was issued.',
  ]);
  bid.dispose();
});

test("a change order that wasn't issued may be changed", async () => {
  const bid = await changedOrder(["panels", 10, 5]);
  bid.type("Change order 1", await addressBeside(bid, "Change order 1", "panels", 13), 5);
  expect(brokenSeals(await bid.host.contents())).toEqual([]);
  bid.dispose();
});
