/**
 * What the trade also says for a word that a form lists, as `plainWord` leaves it. The keys are
 * listed words; one applies only where the input lists it.
 */
export const otherWords: Readonly<Record<string, RegExp>> = {
  yes: /^(?:true|y)$/,
  no: /^(?:false|n)$/,

  'AWS D1.1': /^(?:aws)?d1\.1(?:\/d1\.1m)?(?:(?:19|20)\d\d)?$/,
  'ASME IX': /^(?:asme)?(?:bpvc)?(?:section|sec)?(?:ix|9)(?:(?:19|20)\d\d)?$/,
  'ASME B31.3': /^(?:asme)?b31\.3(?:(?:19|20)\d\d)?$/,
  '2010 or later': /^20[12]\d(?:orlater)?$/,
  'older, with named test pipes': /^(?:19\d\d|200[0-4]|older)$/,

  flat: /^(?:f|1[gf]|pa|downhand)$/,
  horizontal: /^(?:h|2[gf]|p[bc])$/,
  vertical: /^(?:v|3[gf]|pf|vertical(?:up|uphill|upward))$/,
  overhead: /^(?:oh?|4[gf]|p[de])$/,
  uphill: /^(?:up|upward|vertical(?:up|uphill|upward))$/,
  downhill: /^(?:down|downward|vertical(?:down|downhill|downward))$/,

  'low-hydrogen': /^(?:lh|basic|e?\d{2,3}(?:1[568]|28|48)(?:1|m)?(?:h\d+)?r?)$/,
  'not low-hydrogen':
    /^(?:non?lowhydrogen|other(?:thanlowhydrogen)?|cellulosic|cellulose|rutile|e?\d{2,3}(?:1[012349]|2[0247]))$/,
  'with backing': /^(?:yes|true|with|backing|backed|(?:backing)?(?:strip|bar))$/,
  'without backing': /^(?:no|false|without|none|nobacking|openroot)$/,
  pipe: /^(?:pipes|tube|tubular)$/,
  plate: /^plates$/,
  SMAW: /^(?:stick|mma|111|shieldedmetalarc)$/,
  GTAW: /^(?:tig|141)$/,
  GMAW: /^(?:mig|mag|135)$/,

  'groove, open root': /^(?:openroot|openrootgroove|groovewithoutbacking)$/,
  'production, static load': /^(?:static|staticload|staticproduction|staticallyloaded)$/,
  'production, cyclic load': /^(?:cyclic|cyclicload|cyclicproduction|cyclicallyloaded)$/,
  'welder’s test coupon': /^(?:test|coupon|testcoupon|weldertest(?:coupon)?)$/,

  opened:
    /^(?:open|unsealed|sealedopened|(?:container|can|box)opened|opened(?:container|can|box))$/,
  out: /^(?:issued|takenout|removed|exposed|outofoven|inair)$/,
  'in oven':
    /^(?:oven|in(?:the|holding)*oven|back(?:in(?:the)?oven)?|returned(?:to(?:the)?oven)?|hold(?:ing)?(?:oven)?)$/,
  rebaked: /^(?:rebake|rebaking|baked?|baking)$/,

  'at once': /^(?:immediate(?:ly)?|immediateretest|now)$/,
  'after training': /^(?:after)?(?:further|more)?(?:training|practice)$/,
  looking: /^(?:vt|visual|visualexamination)$/,
  'bend, break or section': /^(?:bends?|bendtest|break|filletbreak|macro|macroetch|section)$/,
  radiograph: /^(?:rt|x?ray|radiography|radiographic)$/,
  'slag or incomplete fusion': /^(?:slag|slaginclusion|fusion|incompletefusion|lackoffusion|lof)$/,
  'none seen': /^none$/,
  corner: /^edge$/,
  'fill and fillet': /^(?:fill|fillet|fillorfillet|cap|cover)$/,
  'open root': /^root$/,

  STD: /^standard$/,
  XS: /^(?:xh|x?extra(?:strong|heavy))$/,
  XXS: /^(?:xxh|double?extra(?:strong|heavy))$/,
  A588: /^a588[abck]$/,
  'A618 Grade II': /^a618$/,
  'A537 Class 1': /^a537$/,
  parabola: /^parabolic$/,
  arc: /^circular(?:arc)?$/,
};

/** Nominal pipe sizes by their metric name. */
export const byDiametreNominal: Readonly<Record<string, string>> = {
  dn15: '1/2',
  dn20: '3/4',
  dn25: '1',
  dn32: '1-1/4',
  dn40: '1-1/2',
  dn50: '2',
  dn65: '2-1/2',
  dn80: '3',
  dn90: '3-1/2',
  dn100: '4',
  dn125: '5',
  dn150: '6',
  dn200: '8',
  dn250: '10',
  dn300: '12',
};
