/** A formula that lists the items of the rows for which something holds, one after the other. */
export const listItemsWhere = (items: string, condition: string): string =>
  `TEXTJOIN(", ",TRUE,IF(${condition},${items},""))`;

/** A sentence about items, quiet where there are none. */
export const warningAbout = (sentence: string, items: string): string =>
  `IF(LEN(${items})=0,"","${sentence}: "&${items})`;
