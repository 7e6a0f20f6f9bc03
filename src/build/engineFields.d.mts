export declare const isEngineScript: (path: string) => boolean;
export declare const withFieldHelpers: (source: string) => string;
