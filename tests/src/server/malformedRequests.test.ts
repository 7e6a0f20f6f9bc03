import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serve, type RunningServer } from "../../../src/server/server";
import { oneOf, randomFrom, wholeBetween, type Random } from "../../support/random";

jest.setTimeout(180_000);

const REQUESTS = 20_000;
const AT_ONCE = 100;
const PAGE = "<p>hello</p>";

let folder: string;
let server: RunningServer;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "gablewright-"));
  writeFileSync(join(folder, "index.html"), PAGE);
  server = await serve(folder, 3500);
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

/** What the client does after it has sent its bytes. */
type Then = "wait" | "stop sending" | "hang up";

/** Sends bytes as they are. Resolves with what came back once the connection is closed. */
const send = (bytes: string, then: Then = "wait"): Promise<string> =>
  new Promise((resolve) => {
    let answer = "";
    const socket = connect(Number(new URL(server.address).port), "127.0.0.1", () => {
      socket.write(bytes, "latin1", () => {
        if (then === "hang up") socket.destroy();
        else if (then === "stop sending") socket.end();
      });
    });
    socket.on("data", (chunk: Buffer) => (answer += chunk.toString("latin1")));
    // The server may reset a connection that makes no sense.
    socket.on("error", () => undefined);
    socket.on("close", () => {
      resolve(answer);
    });
  });

const request = (method: string, path: string, headers: readonly string[] = []): string =>
  [`${method} ${path} HTTP/1.1`, "Host: localhost", ...headers, "Connection: close", "", ""].join("\r\n");

const statusOf = (answer: string): number => Number(/^HTTP\/1\.1 (\d+)/.exec(answer)?.[1]);

describe("a malformed request gets an answer", () => {
  it.each([
    ["a range that ends before it starts", request("GET", "/", ["Range: bytes=5-2"]), 416],
    ["a range past the end", request("GET", "/", ["Range: bytes=999-"]), 416],
    ["a method that changes something", request("POST", "/"), 405],
    ["an encoded path that isn't text", request("GET", "/%ff%00"), 400],
    ["a null byte in the path", request("GET", "/%00"), 400],
    ["an encoding that doesn't exist", request("GET", "/", ["Accept-Encoding: nothing;q=7, gzip;;;"]), 200],
    [
      "conditions that make no sense",
      request("GET", "/", ["If-Modified-Since: never", "If-None-Match: ,,"]),
      200,
    ],
    ["no HTTP at all", "hello\r\n\r\n", 400],
  ])("%s", async (_, bytes, status) => {
    expect(statusOf(await send(bytes))).toBe(status);
  });

  it("a range that is fine", async () => {
    const answer = await send(request("GET", "/", ["Range: bytes=3-7"]));
    expect(statusOf(answer)).toBe(206);
    expect(answer.endsWith("\r\n\r\nhello")).toBe(true);
  });
});

const METHODS = ["GET", "HEAD", "POST", "PUT", "DELETE", "OPTIONS", "TRACE", "CONNECT", "BREW", "get", ""];
const PATHS = [
  "/",
  "/index.html",
  "/nothing",
  "//",
  "/%",
  "/%ff",
  "/..%2f..%2fetc",
  "*",
  "http://x/",
  "/?a=%",
  "/\x01",
];
const numberText = (random: Random): string =>
  oneOf(random, ["", "-", "0", "5", "-1", "1e9", "999999999999999999999", "NaN", "x", "\x00"]);

const HEADER: readonly ((random: Random) => string)[] = [
  (random) => `Range: bytes=${numberText(random)}-${numberText(random)}`,
  (random) => `Range: ${numberText(random)}=${numberText(random)},${numberText(random)}-`,
  (random) => `Accept-Encoding: ${numberText(random)};q=${numberText(random)}`,
  (random) => `If-None-Match: "${numberText(random)}`,
  (random) => `If-Range: ${numberText(random)}`,
  (random) => `Content-Length: ${numberText(random)}`,
  (random) => `Transfer-Encoding: ${oneOf(random, ["chunked", "gzip", "identity, chunked", ""])}`,
  (random) => `Host: ${oneOf(random, ["localhost", "elsewhere.example", "[::1]", "\x7f"])}`,
  (random) => `X-${"a".repeat(wholeBetween(random, 0, 9000))}: b`,
  () => "no colon here",
  () => "Expect: 100-continue",
  () => "Upgrade: websocket",
];

/** A request with faults anywhere: method, path, headers, a missing end. */
const malformed = (random: Random): string => {
  const headers = Array.from({ length: wholeBetween(random, 0, 4) }, () => oneOf(random, HEADER)(random));
  const whole = request(oneOf(random, METHODS), oneOf(random, PATHS), headers);
  return random() < 0.3 ? whole.slice(0, wholeBetween(random, 0, whole.length)) : whole;
};

test(`${REQUESTS} malformed requests end nothing and leave no connection open`, async () => {
  const random = randomFrom(416);
  for (let sent = 0; sent < REQUESTS; sent += AT_ONCE)
    await Promise.all(
      Array.from({ length: AT_ONCE }, () =>
        send(malformed(random), random() < 0.2 ? "hang up" : "stop sending"),
      ),
    );
  expect(await send(request("GET", "/"))).toContain(PAGE);
  expect(await server.connections()).toBe(0);
});
