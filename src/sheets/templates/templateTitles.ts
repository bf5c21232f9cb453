/** Titles of the templates by the ids of their sheets, wherever one is named. */
export const templateTitles = {
  outline: 'Template: outline',
  drilling: 'Template: drilling and slot',
  front: 'Template: crown and wings',
  saddle: 'Template: saddle',
  gauges: 'Templates: gauges',
} as const;

/** The id of a template's sheet; one that is too long for a page has parts, `outline-1` and so on. */
export type TemplateId = keyof typeof templateTitles;
