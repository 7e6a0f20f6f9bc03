/** @jsxImportSource react */
import { FluentProvider } from "@fluentui/react-provider";
import type { ComponentChildren } from "preact";
import type { ReactNode } from "react";
import { THEME } from "./theme";

/** Gives the controls inside it their colors, fonts and sizes. */
export const ControlThemeProvider = ({ children }: { readonly children: ComponentChildren }) => (
  // Preact's elements work as React's; only the types differ.
  <FluentProvider theme={THEME}>{children as ReactNode}</FluentProvider>
);
