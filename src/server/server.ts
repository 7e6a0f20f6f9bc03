import {
  createServer as createHttpServer,
  type RequestListener,
  type Server,
  type ServerResponse,
} from "node:http";
import { createServer as createHttpsServer } from "node:https";
import serveStatic from "serve-static";

/** Loopback only, so that no other computer can reach the workbook. */
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

/** How serve-static describes a request that fails: the status, and headers such as Content-Range. */
interface FailedRequest {
  readonly statusCode?: number;
  readonly headers?: Readonly<Record<string, string>>;
}

const REASONS: Readonly<Record<number, string>> = {
  404: "Not found.",
  405: "Only GET and HEAD are allowed.",
  416: "The file has no such range.",
};

/** Answers every failure. An error thrown here would stop the server, and with it lose unsaved work. */
const answerFailure = (response: ServerResponse, { statusCode = 500, headers = {} }: FailedRequest): void => {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  response.writeHead(statusCode, headers).end(`${REASONS[statusCode] ?? "The request failed."}\n`);
};

/** Serves a folder. Refuses a request that names another host (DNS rebinding). */
const listenerFor = (folder: string): RequestListener => {
  const files = serveStatic(folder, { fallthrough: false });
  return (request, response) => {
    for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
    if (!OWN_HOSTS.test(request.headers.host ?? "")) {
      response.writeHead(403).end("This server answers only requests to localhost.\n");
      return;
    }
    files(request, response, (failure?: unknown) => {
      answerFailure(response, failure ?? { statusCode: 404 });
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

const connectionsOf = (server: Server): Promise<number> =>
  new Promise((resolve, reject) => {
    server.getConnections((failure, count) => {
      if (failure) reject(failure);
      else resolve(count);
    });
  });

export interface RunningServer {
  readonly address: string;
  /** How many connections are open. */
  connections(): Promise<number>;
  close(): Promise<void>;
}

const PORTS_TO_TRY = 100;

/** Starts a server on the first free port from `firstPort` on. With a certificate it uses https, which Excel needs. */
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
        connections: () => connectionsOf(server),
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
  throw new Error(`There is no free port between ${firstPort} and ${firstPort + PORTS_TO_TRY - 1}.`);
};
