import webpack, { type Configuration, type Stats } from "webpack";

/** Runs webpack. Rejects with webpack's own error messages. */
export const compile = (config: Configuration): Promise<Stats> =>
  new Promise((resolve, reject) => {
    const compiler = webpack(config);
    compiler.run((failure, stats) => {
      compiler.close(() => {
        if (failure) reject(failure);
        else if (!stats || stats.hasErrors())
          reject(new Error(stats?.toString("errors-warnings") ?? "webpack answered nothing"));
        else resolve(stats);
      });
    });
  });
