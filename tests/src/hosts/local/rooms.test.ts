import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const FOLDER = join(__dirname, "../../../../src/hosts/local");

/** The rooms in the order of the README's table. */
const rooms = [...readFileSync(join(FOLDER, "README.md"), "utf8").matchAll(/^\| `(\w+)` /gm)].map(
  ([, room = ""]) => room,
);

const folders = readdirSync(FOLDER, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name);

test("the README lists every room", () => {
  expect([...rooms].sort()).toEqual(folders.sort());
});

test.each(rooms)("%s imports only the rooms above it", (room) => {
  const sources = readdirSync(join(FOLDER, room))
    .filter((file) => file.endsWith(".ts"))
    .map((file) => readFileSync(join(FOLDER, room, file), "utf8"));
  const imported = sources.flatMap((source) =>
    [...source.matchAll(/"\.\.\/(\w+)\//g)].map(([, other = ""]) => other),
  );
  const above = rooms.slice(0, rooms.indexOf(room));
  expect(imported.filter((other) => rooms.includes(other) && !above.includes(other))).toEqual([]);
});
