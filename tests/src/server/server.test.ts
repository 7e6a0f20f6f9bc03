import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { serve, type RunningServer } from "../../../src/server/server";

interface Reply {
  readonly status: number;
  readonly body: string;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
}

/** A raw request, so that nothing normalizes its path or host. */
const get = (server: RunningServer, path: string, host = "localhost"): Promise<Reply> =>
  new Promise((resolve, reject) => {
    const { port } = new URL(server.address);
    request({ host: "127.0.0.1", port, path, headers: { host } }, (response) => {
      let body = "";
      response.on("data", (chunk: Buffer) => (body += chunk.toString()));
      response.on("end", () => {
        resolve({ status: response.statusCode ?? 0, body, headers: response.headers });
      });
    })
      .on("error", reject)
      .end();
  });

describe("the server", () => {
  let parent: string;
  let server: RunningServer;

  beforeAll(async () => {
    parent = mkdtempSync(join(tmpdir(), "gablewright-"));
    mkdirSync(join(parent, "web"));
    writeFileSync(join(parent, "web/index.html"), "<p>hello</p>");
    writeFileSync(join(parent, "secret.txt"), "secret");
    server = await serve(join(parent, "web"), 3300);
  });

  afterAll(async () => {
    await server.close();
    rmSync(parent, { recursive: true });
  });

  it("serves the folder as UTF-8, and forbids guessing of content types", async () => {
    const { status, body, headers } = await get(server, "/");
    expect([status, body]).toEqual([200, "<p>hello</p>"]);
    expect(headers["content-type"]).toBe("text/html; charset=utf-8");
    expect(headers["x-content-type-options"]).toBe("nosniff");
  });

  it.each(["/../secret.txt", "/..%2fsecret.txt", "/%2e%2e/secret.txt", "/..\\secret.txt"])(
    "serves nothing outside the folder: %s",
    async (path) => {
      const { status, body } = await get(server, path);
      expect(status).toBe(403);
      expect(body).not.toContain("secret\n");
    },
  );

  it("answers 404 for a file that isn't there", async () => {
    expect((await get(server, "/nothing")).status).toBe(404);
  });

  it("refuses a request that names another host", async () => {
    expect((await get(server, "/", "elsewhere.example")).status).toBe(403);
    expect((await get(server, "/", "127.0.0.1:3300")).status).toBe(200);
  });

  it("uses the next port if one is taken, on loopback only", async () => {
    const second = await serve(join(parent, "web"), Number(new URL(server.address).port));
    expect(Number(new URL(second.address).port)).toBeGreaterThan(Number(new URL(server.address).port));
    expect((await get(second, "/")).status).toBe(200);
    await second.close();
  });
});
