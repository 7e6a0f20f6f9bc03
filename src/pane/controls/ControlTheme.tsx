/** @jsxImportSource react */
import { FluentProvider } from "@fluentui/react-provider";
import type { ComponentChildren } from "preact";
import type { ReactNode } from "react";
import { THEME } from "./theme";

/** Gives the controls inside it their colors, type and measures. */
export const Look = ({ children }: { readonly children: ComponentChildren }) => (
  // Preact's elements are React's to everything but the type checker.
  <FluentProvider theme={THEME}>{children as ReactNode}</FluentProvider>
);
