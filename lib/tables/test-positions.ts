/**
 * Which positions a test qualifies, for groove and for fillet welds, as the two codes print it.
 * Where they differ, both stand here.
 */
import type { Citation } from '../calculation.ts';

export type Code = 'AWS D1.1' | 'ASME IX';
export type Form = 'plate' | 'pipe';

export interface Positions {
  groove: string;
  fillet: string;
  /** What the row says of pipe, for a test on plate. */
  onPipe?: string;
  cite: Citation;
}

const f = 'flat';
const fh = 'flat, horizontal';
const fv = 'flat, vertical';
const fo = 'flat, overhead';
const fhv = 'flat, horizontal, vertical';
const fho = 'flat, horizontal, overhead';
const fvo = 'flat, vertical, overhead';
const all = 'flat, horizontal, vertical, overhead';
/** Stands where a test qualifies no weld of that kind. */
export const none = 'none';

const plate20: Citation = { source: 'aws-d1.1', at: '2020 Table 6.10', known: 'read' };
const pipe20: Citation = { source: 'aws-d1.1', at: '2020 Table 10.12', known: 'memory' };
const pipe20read: Citation = { source: 'aws-d1.1', at: '2020 Table 10.13', known: 'read' };
const nine: Citation = { source: 'asme-ix', at: 'QW-461.9', known: 'memory' };

const large = (positions: string) => `${positions}, on pipe of {24 in} outside diameter or more`;
const small = (positions: string) =>
  `${positions}, on pipe of {2-7/8 in} outside diameter up to {24 in}`;

/** By code, form and test. */
export const testPositions: Record<Code, Record<Form, Readonly<Record<string, Positions>>>> = {
  'AWS D1.1': {
    plate: {
      '1G': { groove: f, fillet: fh, onPipe: large(f), cite: plate20 },
      '2G': { groove: fh, fillet: fh, onPipe: large(fh), cite: plate20 },
      '3G': { groove: fhv, fillet: fhv, onPipe: large(fhv), cite: plate20 },
      '4G': { groove: fo, fillet: fho, onPipe: large(fo), cite: plate20 },
      '3G+4G': { groove: all, fillet: all, onPipe: large(all), cite: plate20 },
      '1F': { groove: none, fillet: f, cite: plate20 },
      '2F': { groove: none, fillet: fh, cite: plate20 },
      '3F': { groove: none, fillet: fhv, cite: plate20 },
      '4F': { groove: none, fillet: fho, cite: plate20 },
      '3F+4F': { groove: none, fillet: all, cite: plate20 },
    },
    pipe: {
      '1G': { groove: f, fillet: fh, cite: pipe20 },
      '2G': { groove: fh, fillet: fh, cite: pipe20 },
      '5G': { groove: fvo, fillet: fvo, cite: pipe20 },
      '6G': { groove: all, fillet: all, cite: pipe20 },
      '2G+5G': { groove: all, fillet: all, cite: pipe20 },
      '1F': { groove: none, fillet: f, cite: pipe20 },
      '2F': { groove: none, fillet: fh, cite: pipe20 },
      '4F': { groove: none, fillet: fho, cite: pipe20read },
      '5F': { groove: none, fillet: all, cite: pipe20read },
    },
  },
  'ASME IX': {
    plate: {
      '1G': { groove: f, fillet: f, onPipe: small(f), cite: nine },
      '2G': { groove: fh, fillet: fh, onPipe: small(fh), cite: nine },
      '3G': { groove: fv, fillet: fhv, onPipe: small(f), cite: nine },
      '4G': { groove: fo, fillet: fho, onPipe: small(f), cite: nine },
      '3G+4G': { groove: fvo, fillet: all, onPipe: small(f), cite: nine },
      '2G+3G+4G': { groove: all, fillet: all, onPipe: small(fh), cite: nine },
      '1F': { groove: none, fillet: f, cite: nine },
      '2F': { groove: none, fillet: fh, cite: nine },
      '3F': { groove: none, fillet: fhv, cite: nine },
      '4F': { groove: none, fillet: fho, cite: nine },
      '3F+4F': { groove: none, fillet: all, cite: nine },
    },
    pipe: {
      '1G': { groove: f, fillet: f, cite: nine },
      '2G': { groove: fh, fillet: fh, cite: nine },
      '5G': { groove: fvo, fillet: all, cite: nine },
      '6G': { groove: all, fillet: all, cite: nine },
      '2G+5G': { groove: all, fillet: all, cite: nine },
      '1F': { groove: none, fillet: f, cite: nine },
      '2F': { groove: none, fillet: fh, cite: nine },
      '4F': { groove: none, fillet: fho, cite: nine },
      '5F': { groove: none, fillet: all, cite: nine },
    },
  },
};

/** Every test that some row names, in the order of the trade. */
export const tests = [
  '1G',
  '2G',
  '3G',
  '4G',
  '3G+4G',
  '2G+3G+4G',
  '5G',
  '6G',
  '2G+5G',
  '1F',
  '2F',
  '3F',
  '4F',
  '3F+4F',
  '5F',
] as const;
