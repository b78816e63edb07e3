/**
 * The terms text that a person starts from. Common practice in the trade; a starting point to be edited once, not legal advice.
 */

/** What must stand beside it wherever it is edited or made into a paper. */
export const TERMS_CAUTION =
  'These terms are a starting point, not legal advice: what holds where you work is for somebody who knows the law there to say.';

/** Paragraphs stand apart by an empty line; a gap in braces is filled from the version, and a paragraph whose gap has nothing to say is left out. */
export const STARTING_TERMS = `What is agreed
{me} works for {client}: {job}, {dates}, {place}. Version {version} of the quote says what is done and what it costs: {total} in all. That quote and these terms together are what is agreed.

Deposit
A deposit of {deposit} holds the dates.

Payment
{payment}

Late payment
{late interest}

Hours
Days and hours are those of the quote, from call to wrap, with setting up and striking inside. {overtime} Overtime is asked for on site before it is worked; it is approved by {approver}.

Calling off
{cancellation}

Postponing
{postponement}

Notes on the edit
{rounds}

Use of the pictures
{usage}

Camera files
{originals}

Illness
{illness}

Weather
{weather}

Site and safety
Whoever runs the place has the last word on power, access, crowds and safety. Work stops while it would put people at risk; the hours count.

Changes
What is agreed after this is signed counts once it is written down: what, who and when.`;
