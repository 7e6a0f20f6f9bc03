import {
  createServer as createHttpServer,
  type RequestListener,
  type Server,
  type ServerResponse,
} from "node:http";
import { createServer as createHttpsServer } from "node:https";
import serveStatic from "serve-static";

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

/** What serve-static knows of a request that it can't answer: the status, and headers such as Content-Range. */
interface FailedRequest {
  readonly statusCode?: number;
  readonly headers?: Readonly<Record<string, string>>;
}

const WORDS: Readonly<Record<number, string>> = {
  404: "Not found.",
  405: "Only GET and HEAD are allowed.",
  416: "The file has no such range.",
};

/** Every failure gets an answer: an error that is thrown here would end the server, and unsaved work with it. */
const answerFailure = (response: ServerResponse, { statusCode = 500, headers = {} }: FailedRequest): void => {
  if (response.headersSent) {
    response.destroy();
    return;
  }
  response.writeHead(statusCode, headers).end(`${WORDS[statusCode] ?? "The request failed."}\n`);
};

/** Serves a folder. Refuses a request that names another host (DNS rebinding). */
const listenerFor = (folder: string): RequestListener => {
  const files = serveStatic(folder, { fallthrough: false });
  return (request, response) => {
    for (const [name, value] of Object.entries(HEADERS)) response.setHeader(name, value);
    if (!OWN_HOSTS.test(request.headers.host ?? "")) {
      response.writeHead(403).end("This server answers to localhost only.\n");
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
  throw new Error(`no free port between ${firstPort} and ${firstPort + PORTS_TO_TRY - 1}`);
};
