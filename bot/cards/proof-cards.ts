// Proof, copies and how long to keep them, as cards. Paper that was written, too.

import { basename } from 'node:path';
import type { ChainFault, ChainProof } from '../../core/records/chain.ts';
import { ledgerFields, retentionUnder } from '../../core/records/retention.ts';
import { namedAbroad } from '../../core/session/figure-sources.ts';
import { type Card, makeCard } from './card.ts';
import { type Telling, tap } from './card-context.ts';
import { factsOf } from './facts.ts';

export function proofCard(telling: Pick<Telling, 'words' | 'figures'>, proof: ChainProof): Card {
  const { records } = telling.words;
  const { asked, faults, lastAt } = proof;
  const broken = faults.length > 0 || asked?.found === false;
  const askedLines =
    asked === undefined
      ? []
      : asked.found
        ? [records.hashFound(asked.hash, asked.seq, asked.at, telling.figures)]
        : [records.hashNotFound(asked.hash)];
  const wholeLines =
    lastAt === undefined
      ? [records.verifiedEmpty]
      : broken
        ? []
        : [records.verifiedLines(proof.events, lastAt, telling.figures)];
  return makeCard(broken ? records.broken : records.verified, broken ? 'stop' : 'good', {
    facts: factsOf(telling, { events: proof.events }),
    lines: [
      ...faults.map((fault) => faultLine(telling, fault)),
      ...askedLines,
      ...wholeLines,
      ...(proof.givenFound > 0 ? [records.givenFound(proof.givenFound)] : []),
      ...(proof.events > 0 ? [records.lastHash(proof.events, proof.lastHash)] : []),
      records.proofLimits,
    ],
  });
}

function faultLine(telling: Pick<Telling, 'words' | 'figures'>, fault: ChainFault): string {
  const { records } = telling.words;
  switch (fault.fault) {
    case 'edited':
      return records.edited(fault.seq, fault.type, fault.stream);
    case 'missing':
      return records.missing(fault.from, fault.to);
    case 'replaced':
      return records.replaced(fault.seq, fault.type, fault.stream);
    case 'tail-cut':
      return records.tailCut(fault.endsAt, fault.known);
    case 'given-differs':
      return records.givenDiffers(fault.seq);
    default: {
      const never: never = fault;
      return never;
    }
  }
}

export function keepCard(telling: Telling): Card {
  const { records } = telling.words;
  const { frame } = telling.shop.crew.spray.law;
  return makeCard(records.keep, 'plain', {
    lines: [
      ...retentionUnder(frame).map(({ id, years, source }) =>
        years === undefined
          ? records.keepUntil(records.kept[id], records.keptUntil[id] ?? '', source)
          : records.keepYears(records.kept[id], years, source),
      ),
      ...ledgerFields.map(({ field, source }) =>
        records.ledgerHolds(records.ledgerFields[field], namedAbroad(source, frame)),
      ),
      records.keepRule,
    ],
  });
}

/** `file`: as whoever asked named it, which is a path only from the machine itself. */
export function backupCard(telling: Telling, file: string): Card {
  const { records } = telling.words;
  const name = basename(file);
  return makeCard(records.backedUp(name), 'good', {
    lines: [...(name === file ? [records.backupStays] : []), records.backupHow],
    actions: [tap(telling, 'verify', 'verify')],
    copy: file,
  });
}
