/**
 * Advance widths of DejaVu Sans 2.37, with which texts are laid out: the font itself is named in the files and given to
 * the writer of PDF, not kept in the library. Each range begins at a code point; a letter's width is three digits to
 * base 36, in units of 1/2048 em; dots where the font has no glyph. Taken from the font's own metrics, against which a
 * test holds them.
 */
export const WIDTH_RANGES: readonly (readonly [first: number, widths: string])[] = [
  [
    0x20,
    '0i30mt0q61bo1071i218d0fn0m70m70sg1bo0i30kj0i30j61071071071071071071071071071070j60j61bo1bo1bo0u71kw12x13113q' +
      '17t0zy0wq18316s0gs0gs11b0vp1d316k18s0yb18s13j1040yr15n12x1k912z0yr12z0m70j60m71bo0sg0sg0yv1040va1040z00k1104' +
      '1020ft0ft0wy0ft1jf1020yt1041040ne0tn0mb1020xo1aj0xo0xo0tv1070j61071bo',
  ],
  [
    0xa0,
    '0i30mt1071071071070j60sg0sg1kw0qt0yt1bo0kj1kw0sg0sg1bo0mt0mt0sg1071070i30sg0mt0qt0yt1j51j51j50u712x12x12x12x' +
      '12x12x1jf13q0zy0zy0zy0zy0gs0gs0gs0gs18316k18s18s18s18s18s1bo18s15n15n15n15n0yr0yf0zu0yv0yv0yv0yv0yv0yv1jv0va' +
      '0z00z00z00z00ft0ft0ft0ft0yt1020yt0yt0yt0yt0yt1bo0yt1021021021020xo1040xo12x0yv12x0yv12x0yv13q0va13q0va13q0va' +
      '13q0va17t1041831040zy0z00zy0z00zy0z00zy0z00zy0z018310418310418310418310416s1021g413j0gs0ft0gs0ft0gs0ft0gs0ft' +
      '0gs0ft0xk0vm0gs0ft11b0wy0wy0vp0ft0vp0ft0vp0lc0vp0jg0vz0g616k10216k10216k1021aa16k10218s0yt18s0yt18s0yt1ov1m7' +
      '13j0ne13j0ne13j0ne1040tn1040tn1040tn1040tn0yr0mb0yr0mb0yr0mb15n10215n10215n10215n10215n10215n1021k91aj0yr0xo' +
      '0yr12z0tv12z0tv12z0tv0k110415t13110413110414013q0va1831al1311040yt0zy18s0yy0wq0k11831321jz0k40gs16f0wy0ft0xo' +
      '1jf16k10218s1fy0yt1hz17711310413j1040tn0zy0j40mb0yr0mb0yr1ct10217h15016b15k12z0tv11w11w0wv0tv10711w0wv0t1104' +
      '0gs0s00q40gt28w21w1to1bj18r0pz1gz1gk19d12x0yv0gs0ft18s0yt15n10215n10215n10215n10215n1020z012x0yv12x0yv1jf1jv' +
      '18310418310411b0wy18s0yt18s0yt11w0wv0ft28w21w1to1831041rb12t16k10212x0yv1jf1jv18s0yt12x0yv12x0yv0zy0z00zy0z0' +
      '0gs0ft0gs0ft18s0yt18s0yt13j0ne13j0ne15n10215n1021040tn0yr0mb0zo0to16s10215u1bo13q0yq12z0tv12x0yv0zy0z018s0yt' +
      '18s0yt18s0yt18s0yt0yr0xo0r01by0r50ft1ks1ks12x13q0va0vp0yr0tn0tv0yb0r913115n12x0zy0z00gs0ft18g10413j0ne0yr0xo',
  ],
  [
    0x370,
    '1180wb1d110u0fu0fu16k10z......0sg0v90va0v90j60gs............0sg0sg13e0i316g1dk0n8...1a8...1ax1az0j912x1310vp' +
      '12x0zy12z16s18s0gs11b12x1d316k0zy18s16s0yb...0zy0yr0yr18s12z18s17h0gs0yr11i0ur1020j90wx11i10b0xo0yt0ur0uy102' +
      '0yt0j90xj0xo1070vs0vq0yt0y91040xe1020y90wx11j0wv11j1bn0j90wx0yt0wx1bn11b0yy0z813r1bx13r11j1bn11r18s0yt10w0xe' +
      '0wq0q311j11j1d80zp1h41bn17511i1910yz1320yj17o0zk13s0yt0yr0ui11r1040va0ft18s0z00z00yf10413q1d311110414013q140',
  ],
  [
    0x400,
    '0zy0zy18q0yp13q1040gs0gs0gs1q81ng18q14e16k0yo16s12x1311310yp18g0zy1pa10h16k16k14e16s1d316s18s16s0yb13q0yr0yo' +
      '1cz12z1861301ou1q81bd1e713113q1pf13j0yv0z30xj0tw13c0z01f90u910z10z0yd10d16x1170yt1171040va0x50xo1cn0xo12q0xm' +
      '1g21hl14718x0xj0v81bw0y80z00z00zk0tw0v80tn0ft0ft0ft1fc1f41130yd10z0xo1171h41bn17u1281hm16m1e118k1tz1kz18s0yt' +
      '1mf1aw1070ur1cq1dv18s0yt18g11u18g11u1kg1fg1i81751v41mh1h41bn13q0va0sl0000000000000000ns0ns17y12i1310xj0yb104' +
      '0yp0tw12e0xl0zi0u51pa1f910h0u914e0yd14e0yd14e0yd1cq1bb16s11l1lp1dw1pi1g31dy13f13q0va0yr0x50yr0xo0yr0xo12z0xo' +
      '1h519w1300xm1300xm1301021hj15f1hj15f0gs1pa1f911b0yd18512516s11l18612q1300xm1ei1820ft12x0yv12x0yv1jf1jv0zy0z0' +
      '18s0z018s0z01pa1f910h0u911w0wv16k10z16k10z18s0yt18s0yt18s0yt13q0v80yo0xo0yo0xo0yo0xo1300xm0yp0tw1e718x12e0xl' +
      '12z0xo12z0xo1310xj1l81f11jg1dg12m0xh1oz1ig1rb1j118311j17z14g0yy0ur16s10d1ui1kj1ev1d61mp1k318s1041k91aj14e0yd' +
      '1ph1fi1pi1fw19412u..............................',
  ],
  [
    0x1e00,
    '12x0yv13110413110413110413q0va17t10417t10417t10417t10417t1040zy0z00zy0z00zy0z00zy0z00zy0z00wq0k118310416s102' +
      '16s10216s10216s10216s1020gs0ft0gs0ft11b0wy11b0wy11b0wy0vp0gd0vp0gd0vp0ft0vp0ft1d31jf1d31jf1d31jf16k10216k102' +
      '16k10216k10218s0yt18s0yt18s0yt18s0yt0yb1040yb10413j0ne13j0ne13j0ne13j0ne1040tn1040tn1040tn1040tn1040tn0yr0mb' +
      '0yr0mb0yr0mb0yr0mb15n10215n10215n10215n10215n10212x0xo12x0xo1k91aj1k91aj1k91aj1k91aj1k91aj12z0xo12z0xo0yr0xo' +
      '12z0tv12z0tv12z0tv1020mb1aj0xo0yv0k10k10k117q0yt12x0yv12x0yv12x0yv12x0yv12x0yv12x0yv12x0yv12x0yv12x0yv12x0yv' +
      '12x0yv12x0yv0zy0z00zy0z00zy0z00zy0z00zy0z00zy0z00zy0z00zy0z00gs0ft0gs0ft18s0yt18s0yt18s0yt18s0yt18s0yt18s0yt' +
      '18s0yt1fy0yt1fy0yt1fy0yt1fy0yt1fy0yt15n10215n1021ct1021ct1021ct1021ct1021ct1020yr0xo0yr0xo0yr0xo0yr0xo17r0r5' +
      '............',
  ],
  [0x2010, '0kj0kj1070sg1kw1kw0sg0sg0i30i30i30i30th0th0th0th0sg0sg0xk0xk0j111z1kw0i3'],
  [0x2030, '24c2qq0cx0l90tl0cx0l90tl0ja0mr0mr1bo0rm0u70sg19q19q0e81kw0sg09i0m70m7'],
  [
    0x2070,
    '0mt0a6......0mt0mt0mt0mt0mt0mt0u10u10u10dz0dz0mo0mt0mt0mt0mt0mt0mt0mt0mt0mt0mt0u10u10u10dz0dz...0ma0nq0nj0p9' +
      '0nq0n00o809g0zg0mo0od0l80gs.........1dw1071071071071jf10720e1p31k918m10710710710720e107107107107181107',
  ],
  [
    0x2190,
    '1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo' +
      '1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo' +
      '1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo' +
      '1bo1bo1bo1bo12x1070tf0zy0zy1dk1221221dk1dk14u1dk1dk14u10717217212c1bo1bo1bo0j61081bo0zm0zm10910910914n1be1bo' +
      '1f01f01bo0sg0sg0sg0sg15n15n15n15n0tn18w1o50tn18w1o50tn0tn0tn1071070et1071bo1bo1bo1bo1bo1bo1bo1bo0lc1bo1bo1bo' +
      '1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bq1bq1kw1kw1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo' +
      '1bo1bo1nk1nk0qe1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo' +
      '15n15n15n1bo1bo1bo1bo18e18e1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1dk1dk1dk1dk0tm0tm1dk1dk1dk1dk1dk1dk1dk1dk' +
      '1bo1bo1bo1bo1bo1bo1kw1kw1bo1bo0tm15n15n15n1bo1bo1ao1ao1ao1ao0zm0i30zm1bo1kw1kw1kw1kw1kw1bo15o15o1bo1bo1bo1bo' +
      '1bo1bo1bo1bo28x28x1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1bo1kw1kw1kw1kw1kw1dk14u1dk1dk14u' +
      '1dk1dk1kw1dk14u1dk14u1dk',
  ],
  [
    0x25a0,
    '1hr1hr1hr1hr1hr1hr1hr1hr1hr1hr12k12k1hr1hr0vb0vb17r17r17r17r0sk0sk17r17r0sk0sk17r17r17r17r0sk0sk17r17r0sk0sk' +
      '17r17r17r17r17r1dn0s41dn1dn1dn1dn1dn1dn1dn1dn1dn1dn1dn0tz0tz1901j71j71j70m10m10m10m11dn1dn17r17r17r17r0xk1hr' +
      '1hr1hr1hr1hr17r17r17r1ro1hr1hr1hr1hr1dn1dn1dn1dn17r17r17r1b81b815o15o17r',
  ],
];
