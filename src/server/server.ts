import { createServer as createHttpServer, type RequestListener, type Server } from "node:http";
import { createServer as createHttpsServer } from "node:https";
import sirv from "sirv";

/** Loopback only: the workbook is nobody else's business. */
const LOOPBACK = "127.0.0.1";
const OWN_HOSTS = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d+)?$/;

export interface Certificate {
  readonly cert: Buffer;
  readonly key: Buffer;
}

const HEADERS: Readonly<Record<string, string>> = {
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cache-Control": "no-cache",
};

/** Serves a folder; a request that names another host (DNS rebinding) is refused. */
const listenerFor = (folder: string): RequestListener => {
  const files = sirv(folder, { gzip: true, etag: true, dev: false });
  return (request, response) => {
    for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
    if (!OWN_HOSTS.test(request.headers.host ?? "")) {
      response.writeHead(403).end("This server answers to localhost only.\n");
      return;
    }
    files(request, response, () => {
      response.writeHead(404).end("Not found.\n");
    });
  };
};

const listen = (server: Server, port: number): Promise<boolean> =>
  new Promise((resolve, reject) => {
    const onError = (error: NodeJS.ErrnoException): void => {
      if (error.code === "EADDRINUSE") resolve(false);
      else reject(error);
    };
    server.once("error", onError);
    server.listen(port, LOOPBACK, () => {
      server.off("error", onError);
      resolve(true);
    });
  });

export interface RunningServer {
  readonly address: string;
  close(): Promise<void>;
}

const PORTS_TO_TRY = 100;

/** Starts on the first free port from `firstPort` on; with a certificate it speaks https, as Excel needs it. */
export const serve = async (
  folder: string,
  firstPort: number,
  certificate?: Certificate,
): Promise<RunningServer> => {
  for (let port = firstPort; port < firstPort + PORTS_TO_TRY; port++) {
    const listener = listenerFor(folder);
    const server = certificate ? createHttpsServer(certificate, listener) : createHttpServer(listener);
    if (await listen(server, port))
      return {
        address: `${certificate ? "https" : "http"}://localhost:${port}/`,
        close: () =>
          new Promise((resolve) => {
            server.closeAllConnections();
            server.close(() => {
              resolve();
            });
          }),
      };
  }
  throw new Error(`no free port between ${firstPort} and ${firstPort + PORTS_TO_TRY - 1}`);
};
