/** A formula that lists the items of the rows for which something holds, one after the other. */
export const itemsWhere = (items: string, condition: string): string =>
  `TEXTJOIN(", ",TRUE,IF(${condition},${items},""))`;

/** A sentence about items, quiet where there are none. */
export const about = (sentence: string, items: string): string =>
  `IF(LEN(${items})=0,"","${sentence}: "&${items})`;
