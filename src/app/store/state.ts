import type { Holes } from '../../../models/curves/curves.ts';
import type { Draft, Failure, Solid } from '../../../workers/protocol.ts';
import type { DesignText } from '../../design/design.ts';
import type { Group } from '../../design/fields.ts';
import type { Units } from '../../sheets/lengthText.ts';
import type { PAPERS } from '../../sheets/sheet.ts';
import type { ClientState } from '../client/client.ts';
import type { History } from './history.ts';
import type { Accepted } from './judge.ts';

/** An answer of the workers, and what it was asked for. */
export interface Built<Answer> {
  readonly text: DesignText;
  readonly holes: Holes;
  readonly answer: Answer;
}

/** The part as last built. */
export interface Part {
  readonly draft: Built<Draft> | undefined;
  readonly solid: Built<Solid> | undefined;
  /** Which of the two came last. */
  readonly newest: 'draft' | 'solid' | undefined;
  /** Why a draft or a solid of this document can't be had. */
  readonly trouble: Built<Failure> | undefined;
}

/** The file on disk that the design came from or was saved to. */
export interface DesignFile {
  readonly name: string;
  readonly handle: FileSystemFileHandle | undefined;
  /** The document as it stands in the file. */
  readonly text: DesignText;
}

/** What the middle column shows. */
export type MiddleTab = 'part' | 'sheets' | 'making';

/** On what and in which units the papers are drawn. */
export interface PapersChoice {
  readonly paper: keyof typeof PAPERS;
  readonly units: Units;
}

/** How large a sheet is shown: fitted, or so many times its own size. */
export type Zoom = 'page' | 'width' | number;

/** How far the job by hand has come on the bench for one design. */
export interface Bench {
  /** What the design is called. */
  readonly name: string;
  /** The workshop's fields that were filled in, as typed. */
  readonly workshop: Readonly<Record<string, string>>;
  /** Ids of the steps that are done. */
  readonly ticked: readonly string[];
  /** Measured values as typed, by the id of their setting. */
  readonly measured: Readonly<Record<string, string>>;
  /** When it was last changed, ms since 1970. */
  readonly at: number;
}

/** Benches by the fingerprint of their design: what was measured was measured against that design and no other. */
export type Benches = Readonly<Record<string, Bench>>;

/** An order as typed. */
export interface OrderText {
  readonly quantity: string;
  readonly deadline: string;
  readonly remarks: string;
  readonly sandingAllowance: string;
}

export type RightTab = 'fit' | 'findings' | 'figures' | 'compare';

/** A design to compare with, by the name under which it was chosen. */
export interface Reference {
  readonly name: string;
  readonly text: DesignText;
}

export type Theme = 'auto' | 'light' | 'dark';

/** Something to say in a dialog. */
export interface Notice {
  readonly title: string;
  readonly lines: readonly string[];
}

/** What is open, chosen and shown: not part of the document, and not undone. */
export interface Session {
  /** Path of the selected field. */
  readonly selected: string | undefined;
  /** The field that asks for the caret, counted so that it can ask again. */
  readonly call: { readonly path: string; readonly count: number };
  readonly openGroups: ReadonlySet<Group>;
  readonly holes: Holes;
  readonly theme: Theme;
  /** Where the right column folds under a tab: whether the tab is turned to it. */
  readonly figuresInFront: boolean;
  /** Which of the right column's tabs is in front. */
  readonly rightTab: RightTab;
  /** Id of the finding whose place is shown on the part. */
  readonly finding: string | undefined;
  /** What the design is compared with. */
  readonly reference: Reference | undefined;
  /** The string whose intonation and elevation are drawn, counted from 0; the last one where there are fewer. */
  readonly shownString: number;
  /** Which of the middle column's views is in front. */
  readonly middle: MiddleTab;
  readonly papers: PapersChoice;
  /** Id of the sheet that is shown; the first one where there is none of that id. */
  readonly sheet: string;
  readonly zoom: Zoom;
  readonly benches: Benches;
  readonly order: OrderText;
  /** The picture's share of the middle column's height. */
  readonly share: number;
  /** Whether the browser keeps the open design through a reload. */
  readonly keeping: 'kept' | 'writing' | 'refused';
  readonly file: DesignFile | undefined;
  readonly notice: Notice | undefined;
}

export interface AppState {
  readonly history: History;
  /** The last design that could be made. */
  readonly lastGood: Accepted | undefined;
  /** Whether that is another bridge than the one on the bench, which was opened since and can't be made. */
  readonly goodIsAnother: boolean;
  readonly session: Session;
  readonly part: Part;
  readonly kernel: ClientState;
}
