// Generated from server/src/format by server/build/generate.mjs. Do not edit.
var Ke = M,
  Ts = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    type: 'object',
    properties: {
      format: { type: 'number', const: 1 },
      uses: { minItems: 1, type: 'array', items: { type: 'string', pattern: '\\S' }, uniqueItems: !0 },
      title: { type: 'string', pattern: '\\S' },
      'applies-to': { type: 'string', pattern: '\\S' },
      revision: { type: 'string', pattern: '\\S' },
      purpose: { type: 'string', pattern: '\\S' },
      requires: {
        type: 'object',
        properties: {
          training: {
            minItems: 1,
            type: 'array',
            items: { type: 'string', pattern: '\\S' },
            uniqueItems: !0,
          },
          protective: {
            minItems: 1,
            type: 'array',
            items: { type: 'string', pattern: '\\S' },
            uniqueItems: !0,
          },
          information: {
            minItems: 1,
            type: 'array',
            items: { type: 'string', pattern: '\\S' },
            uniqueItems: !0,
          },
        },
        additionalProperties: !1,
        minProperties: 1,
      },
      conditions: {
        type: 'object',
        properties: { ambient: { type: 'string' } },
        additionalProperties: !1,
        minProperties: 1,
      },
      sources: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      entries: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      instruments: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      loads: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      parts: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      connectors: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      assemblies: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {
          anyOf: [
            {
              type: 'string',
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
            {
              minItems: 1,
              type: 'array',
              items: {
                type: 'string',
                pattern:
                  '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
              },
              uniqueItems: !0,
            },
          ],
        },
        minProperties: 1,
      },
      loops: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      routines: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      network: { minItems: 1, type: 'array', items: {} },
      waivers: { minItems: 1, type: 'array', items: {} },
      steps: { minItems: 1, type: 'array', items: {} },
    },
    required: ['format', 'title', 'sources', 'instruments', 'parts', 'steps'],
    additionalProperties: !1,
    $id: 'shell',
  },
  _ = Object.prototype.hasOwnProperty,
  u = new RegExp('\\S', 'u'),
  v = new RegExp(
    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    'u',
  );
function M(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = M.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.format === void 0) {
      let d = {
        instancePath: i,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'format' },
      };
      (e === null ? (e = [d]) : e.push(d), t++);
    }
    if (o.title === void 0) {
      let d = {
        instancePath: i,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'title' },
      };
      (e === null ? (e = [d]) : e.push(d), t++);
    }
    if (o.sources === void 0) {
      let d = {
        instancePath: i,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'sources' },
      };
      (e === null ? (e = [d]) : e.push(d), t++);
    }
    if (o.instruments === void 0) {
      let d = {
        instancePath: i,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'instruments' },
      };
      (e === null ? (e = [d]) : e.push(d), t++);
    }
    if (o.parts === void 0) {
      let d = {
        instancePath: i,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'parts' },
      };
      (e === null ? (e = [d]) : e.push(d), t++);
    }
    if (o.steps === void 0) {
      let d = {
        instancePath: i,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'steps' },
      };
      (e === null ? (e = [d]) : e.push(d), t++);
    }
    for (let d in o)
      if (!_.call(Ts.properties, d)) {
        let a = {
          instancePath: i,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: d },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    if (o.format !== void 0) {
      let d = o.format;
      if (!(typeof d == 'number' && isFinite(d))) {
        let a = {
          instancePath: i + '/format',
          schemaPath: '#/properties/format/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
      if (d !== 1) {
        let a = {
          instancePath: i + '/format',
          schemaPath: '#/properties/format/const',
          keyword: 'const',
          params: { allowedValue: 1 },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.uses !== void 0) {
      let d = o.uses;
      if (Array.isArray(d)) {
        if (d.length < 1) {
          let Z = {
            instancePath: i + '/uses',
            schemaPath: '#/properties/uses/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [Z]) : e.push(Z), t++);
        }
        let a = d.length;
        for (let Z = 0; Z < a; Z++) {
          let k = d[Z];
          if (typeof k == 'string') {
            if (!u.test(k)) {
              let x = {
                instancePath: i + '/uses/' + Z,
                schemaPath: '#/properties/uses/items/pattern',
                keyword: 'pattern',
                params: { pattern: '\\S' },
              };
              (e === null ? (e = [x]) : e.push(x), t++);
            }
          } else {
            let x = {
              instancePath: i + '/uses/' + Z,
              schemaPath: '#/properties/uses/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [x]) : e.push(x), t++);
          }
        }
        let g = d.length,
          c;
        if (g > 1) {
          let Z = {};
          for (; g--;) {
            let k = d[g];
            if (typeof k == 'string') {
              if (typeof Z[k] == 'number') {
                c = Z[k];
                let x = {
                  instancePath: i + '/uses',
                  schemaPath: '#/properties/uses/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: g, j: c },
                };
                (e === null ? (e = [x]) : e.push(x), t++);
                break;
              }
              Z[k] = g;
            }
          }
        }
      } else {
        let a = {
          instancePath: i + '/uses',
          schemaPath: '#/properties/uses/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.title !== void 0) {
      let d = o.title;
      if (typeof d == 'string') {
        if (!u.test(d)) {
          let a = {
            instancePath: i + '/title',
            schemaPath: '#/properties/title/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/title',
          schemaPath: '#/properties/title/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o['applies-to'] !== void 0) {
      let d = o['applies-to'];
      if (typeof d == 'string') {
        if (!u.test(d)) {
          let a = {
            instancePath: i + '/applies-to',
            schemaPath: '#/properties/applies-to/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/applies-to',
          schemaPath: '#/properties/applies-to/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.revision !== void 0) {
      let d = o.revision;
      if (typeof d == 'string') {
        if (!u.test(d)) {
          let a = {
            instancePath: i + '/revision',
            schemaPath: '#/properties/revision/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/revision',
          schemaPath: '#/properties/revision/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.purpose !== void 0) {
      let d = o.purpose;
      if (typeof d == 'string') {
        if (!u.test(d)) {
          let a = {
            instancePath: i + '/purpose',
            schemaPath: '#/properties/purpose/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/purpose',
          schemaPath: '#/properties/purpose/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.requires !== void 0) {
      let d = o.requires;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/requires',
            schemaPath: '#/properties/requires/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d)
          if (!(a === 'training' || a === 'protective' || a === 'information')) {
            let g = {
              instancePath: i + '/requires',
              schemaPath: '#/properties/requires/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: a },
            };
            (e === null ? (e = [g]) : e.push(g), t++);
          }
        if (d.training !== void 0) {
          let a = d.training;
          if (Array.isArray(a)) {
            if (a.length < 1) {
              let k = {
                instancePath: i + '/requires/training',
                schemaPath: '#/properties/requires/properties/training/minItems',
                keyword: 'minItems',
                params: { limit: 1 },
              };
              (e === null ? (e = [k]) : e.push(k), t++);
            }
            let g = a.length;
            for (let k = 0; k < g; k++) {
              let x = a[k];
              if (typeof x == 'string') {
                if (!u.test(x)) {
                  let z = {
                    instancePath: i + '/requires/training/' + k,
                    schemaPath: '#/properties/requires/properties/training/items/pattern',
                    keyword: 'pattern',
                    params: { pattern: '\\S' },
                  };
                  (e === null ? (e = [z]) : e.push(z), t++);
                }
              } else {
                let z = {
                  instancePath: i + '/requires/training/' + k,
                  schemaPath: '#/properties/requires/properties/training/items/type',
                  keyword: 'type',
                  params: { type: 'string' },
                };
                (e === null ? (e = [z]) : e.push(z), t++);
              }
            }
            let c = a.length,
              Z;
            if (c > 1) {
              let k = {};
              for (; c--;) {
                let x = a[c];
                if (typeof x == 'string') {
                  if (typeof k[x] == 'number') {
                    Z = k[x];
                    let z = {
                      instancePath: i + '/requires/training',
                      schemaPath: '#/properties/requires/properties/training/uniqueItems',
                      keyword: 'uniqueItems',
                      params: { i: c, j: Z },
                    };
                    (e === null ? (e = [z]) : e.push(z), t++);
                    break;
                  }
                  k[x] = c;
                }
              }
            }
          } else {
            let g = {
              instancePath: i + '/requires/training',
              schemaPath: '#/properties/requires/properties/training/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            (e === null ? (e = [g]) : e.push(g), t++);
          }
        }
        if (d.protective !== void 0) {
          let a = d.protective;
          if (Array.isArray(a)) {
            if (a.length < 1) {
              let k = {
                instancePath: i + '/requires/protective',
                schemaPath: '#/properties/requires/properties/protective/minItems',
                keyword: 'minItems',
                params: { limit: 1 },
              };
              (e === null ? (e = [k]) : e.push(k), t++);
            }
            let g = a.length;
            for (let k = 0; k < g; k++) {
              let x = a[k];
              if (typeof x == 'string') {
                if (!u.test(x)) {
                  let z = {
                    instancePath: i + '/requires/protective/' + k,
                    schemaPath: '#/properties/requires/properties/protective/items/pattern',
                    keyword: 'pattern',
                    params: { pattern: '\\S' },
                  };
                  (e === null ? (e = [z]) : e.push(z), t++);
                }
              } else {
                let z = {
                  instancePath: i + '/requires/protective/' + k,
                  schemaPath: '#/properties/requires/properties/protective/items/type',
                  keyword: 'type',
                  params: { type: 'string' },
                };
                (e === null ? (e = [z]) : e.push(z), t++);
              }
            }
            let c = a.length,
              Z;
            if (c > 1) {
              let k = {};
              for (; c--;) {
                let x = a[c];
                if (typeof x == 'string') {
                  if (typeof k[x] == 'number') {
                    Z = k[x];
                    let z = {
                      instancePath: i + '/requires/protective',
                      schemaPath: '#/properties/requires/properties/protective/uniqueItems',
                      keyword: 'uniqueItems',
                      params: { i: c, j: Z },
                    };
                    (e === null ? (e = [z]) : e.push(z), t++);
                    break;
                  }
                  k[x] = c;
                }
              }
            }
          } else {
            let g = {
              instancePath: i + '/requires/protective',
              schemaPath: '#/properties/requires/properties/protective/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            (e === null ? (e = [g]) : e.push(g), t++);
          }
        }
        if (d.information !== void 0) {
          let a = d.information;
          if (Array.isArray(a)) {
            if (a.length < 1) {
              let k = {
                instancePath: i + '/requires/information',
                schemaPath: '#/properties/requires/properties/information/minItems',
                keyword: 'minItems',
                params: { limit: 1 },
              };
              (e === null ? (e = [k]) : e.push(k), t++);
            }
            let g = a.length;
            for (let k = 0; k < g; k++) {
              let x = a[k];
              if (typeof x == 'string') {
                if (!u.test(x)) {
                  let z = {
                    instancePath: i + '/requires/information/' + k,
                    schemaPath: '#/properties/requires/properties/information/items/pattern',
                    keyword: 'pattern',
                    params: { pattern: '\\S' },
                  };
                  (e === null ? (e = [z]) : e.push(z), t++);
                }
              } else {
                let z = {
                  instancePath: i + '/requires/information/' + k,
                  schemaPath: '#/properties/requires/properties/information/items/type',
                  keyword: 'type',
                  params: { type: 'string' },
                };
                (e === null ? (e = [z]) : e.push(z), t++);
              }
            }
            let c = a.length,
              Z;
            if (c > 1) {
              let k = {};
              for (; c--;) {
                let x = a[c];
                if (typeof x == 'string') {
                  if (typeof k[x] == 'number') {
                    Z = k[x];
                    let z = {
                      instancePath: i + '/requires/information',
                      schemaPath: '#/properties/requires/properties/information/uniqueItems',
                      keyword: 'uniqueItems',
                      params: { i: c, j: Z },
                    };
                    (e === null ? (e = [z]) : e.push(z), t++);
                    break;
                  }
                  k[x] = c;
                }
              }
            }
          } else {
            let g = {
              instancePath: i + '/requires/information',
              schemaPath: '#/properties/requires/properties/information/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            (e === null ? (e = [g]) : e.push(g), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/requires',
          schemaPath: '#/properties/requires/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.conditions !== void 0) {
      let d = o.conditions;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/conditions',
            schemaPath: '#/properties/conditions/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d)
          if (a !== 'ambient') {
            let g = {
              instancePath: i + '/conditions',
              schemaPath: '#/properties/conditions/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: a },
            };
            (e === null ? (e = [g]) : e.push(g), t++);
          }
        if (d.ambient !== void 0 && typeof d.ambient != 'string') {
          let a = {
            instancePath: i + '/conditions/ambient',
            schemaPath: '#/properties/conditions/properties/ambient/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/conditions',
          schemaPath: '#/properties/conditions/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.sources !== void 0) {
      let d = o.sources;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/sources',
            schemaPath: '#/properties/sources/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/sources',
                schemaPath: '#/properties/sources/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/sources',
              schemaPath: '#/properties/sources/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var r = g === t;
          if (!r) {
            let c = {
              instancePath: i + '/sources',
              schemaPath: '#/properties/sources/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/sources',
          schemaPath: '#/properties/sources/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.entries !== void 0) {
      let d = o.entries;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/entries',
            schemaPath: '#/properties/entries/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/entries',
                schemaPath: '#/properties/entries/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/entries',
              schemaPath: '#/properties/entries/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var s = g === t;
          if (!s) {
            let c = {
              instancePath: i + '/entries',
              schemaPath: '#/properties/entries/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/entries',
          schemaPath: '#/properties/entries/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.instruments !== void 0) {
      let d = o.instruments;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/instruments',
            schemaPath: '#/properties/instruments/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/instruments',
                schemaPath: '#/properties/instruments/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/instruments',
              schemaPath: '#/properties/instruments/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var n = g === t;
          if (!n) {
            let c = {
              instancePath: i + '/instruments',
              schemaPath: '#/properties/instruments/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/instruments',
          schemaPath: '#/properties/instruments/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.loads !== void 0) {
      let d = o.loads;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/loads',
            schemaPath: '#/properties/loads/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/loads',
                schemaPath: '#/properties/loads/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/loads',
              schemaPath: '#/properties/loads/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var p = g === t;
          if (!p) {
            let c = {
              instancePath: i + '/loads',
              schemaPath: '#/properties/loads/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/loads',
          schemaPath: '#/properties/loads/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.parts !== void 0) {
      let d = o.parts;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/parts',
            schemaPath: '#/properties/parts/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/parts',
                schemaPath: '#/properties/parts/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/parts',
              schemaPath: '#/properties/parts/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var l = g === t;
          if (!l) {
            let c = {
              instancePath: i + '/parts',
              schemaPath: '#/properties/parts/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/parts',
          schemaPath: '#/properties/parts/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.connectors !== void 0) {
      let d = o.connectors;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/connectors',
            schemaPath: '#/properties/connectors/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/connectors',
                schemaPath: '#/properties/connectors/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/connectors',
              schemaPath: '#/properties/connectors/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var f = g === t;
          if (!f) {
            let c = {
              instancePath: i + '/connectors',
              schemaPath: '#/properties/connectors/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/connectors',
          schemaPath: '#/properties/connectors/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.assemblies !== void 0) {
      let d = o.assemblies;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/assemblies',
            schemaPath: '#/properties/assemblies/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/assemblies',
                schemaPath: '#/properties/assemblies/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/assemblies',
              schemaPath: '#/properties/assemblies/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var m = g === t;
          if (!m) {
            let c = {
              instancePath: i + '/assemblies',
              schemaPath: '#/properties/assemblies/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
        for (let a in d) {
          let g = d[a],
            c = t,
            Z = !1,
            k = t;
          if (typeof g == 'string') {
            if (!v.test(g)) {
              let z = {
                instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath: '#/properties/assemblies/additionalProperties/anyOf/0/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [z]) : e.push(z), t++);
            }
          } else {
            let z = {
              instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/assemblies/additionalProperties/anyOf/0/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [z]) : e.push(z), t++);
          }
          var w = k === t;
          Z = Z || w;
          let x = t;
          if (Array.isArray(g)) {
            if (g.length < 1) {
              let S = {
                instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/minItems',
                keyword: 'minItems',
                params: { limit: 1 },
              };
              (e === null ? (e = [S]) : e.push(S), t++);
            }
            let z = g.length;
            for (let S = 0; S < z; S++) {
              let N = g[S];
              if (typeof N == 'string') {
                if (!v.test(N)) {
                  let I = {
                    instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + S,
                    schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/items/pattern',
                    keyword: 'pattern',
                    params: {
                      pattern:
                        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                    },
                  };
                  (e === null ? (e = [I]) : e.push(I), t++);
                }
              } else {
                let I = {
                  instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + S,
                  schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/items/type',
                  keyword: 'type',
                  params: { type: 'string' },
                };
                (e === null ? (e = [I]) : e.push(I), t++);
              }
            }
            let O = g.length,
              D;
            if (O > 1) {
              let S = {};
              for (; O--;) {
                let N = g[O];
                if (typeof N == 'string') {
                  if (typeof S[N] == 'number') {
                    D = S[N];
                    let I = {
                      instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
                      schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/uniqueItems',
                      keyword: 'uniqueItems',
                      params: { i: O, j: D },
                    };
                    (e === null ? (e = [I]) : e.push(I), t++);
                    break;
                  }
                  S[N] = O;
                }
              }
            }
          } else {
            let z = {
              instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            (e === null ? (e = [z]) : e.push(z), t++);
          }
          var w = x === t;
          if (((Z = Z || w), Z)) ((t = c), e !== null && (c ? (e.length = c) : (e = null)));
          else {
            let z = {
              instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/assemblies/additionalProperties/anyOf',
              keyword: 'anyOf',
              params: {},
            };
            (e === null ? (e = [z]) : e.push(z), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/assemblies',
          schemaPath: '#/properties/assemblies/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.loops !== void 0) {
      let d = o.loops;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/loops',
            schemaPath: '#/properties/loops/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/loops',
                schemaPath: '#/properties/loops/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/loops',
              schemaPath: '#/properties/loops/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var A = g === t;
          if (!A) {
            let c = {
              instancePath: i + '/loops',
              schemaPath: '#/properties/loops/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/loops',
          schemaPath: '#/properties/loops/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.routines !== void 0) {
      let d = o.routines;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/routines',
            schemaPath: '#/properties/routines/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/routines',
                schemaPath: '#/properties/routines/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/routines',
              schemaPath: '#/properties/routines/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var y = g === t;
          if (!y) {
            let c = {
              instancePath: i + '/routines',
              schemaPath: '#/properties/routines/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/routines',
          schemaPath: '#/properties/routines/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.network !== void 0) {
      let d = o.network;
      if (Array.isArray(d)) {
        if (d.length < 1) {
          let a = {
            instancePath: i + '/network',
            schemaPath: '#/properties/network/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/network',
          schemaPath: '#/properties/network/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.waivers !== void 0) {
      let d = o.waivers;
      if (Array.isArray(d)) {
        if (d.length < 1) {
          let a = {
            instancePath: i + '/waivers',
            schemaPath: '#/properties/waivers/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/waivers',
          schemaPath: '#/properties/waivers/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.steps !== void 0) {
      let d = o.steps;
      if (Array.isArray(d)) {
        if (d.length < 1) {
          let a = {
            instancePath: i + '/steps',
            schemaPath: '#/properties/steps/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/steps',
          schemaPath: '#/properties/steps/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
  } else {
    let d = { instancePath: i, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    (e === null ? (e = [d]) : e.push(d), t++);
  }
  return ((M.errors = e), t === 0);
}
M.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Le = V,
  Us = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    type: 'object',
    properties: {
      format: { type: 'number', const: 1 },
      title: { type: 'string', pattern: '\\S' },
      uses: { minItems: 1, type: 'array', items: { type: 'string', pattern: '\\S' }, uniqueItems: !0 },
      sources: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      entries: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      instruments: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      loads: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      parts: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      connectors: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      assemblies: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {
          anyOf: [
            {
              type: 'string',
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
            {
              minItems: 1,
              type: 'array',
              items: {
                type: 'string',
                pattern:
                  '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
              },
              uniqueItems: !0,
            },
          ],
        },
        minProperties: 1,
      },
      loops: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
      routines: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {},
        minProperties: 1,
      },
    },
    required: ['format'],
    additionalProperties: !1,
    $id: 'parts-shell',
  };
function V(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = V.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.format === void 0) {
      let d = {
        instancePath: i,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'format' },
      };
      (e === null ? (e = [d]) : e.push(d), t++);
    }
    for (let d in o)
      if (!_.call(Us.properties, d)) {
        let a = {
          instancePath: i,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: d },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    if (o.format !== void 0) {
      let d = o.format;
      if (!(typeof d == 'number' && isFinite(d))) {
        let a = {
          instancePath: i + '/format',
          schemaPath: '#/properties/format/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
      if (d !== 1) {
        let a = {
          instancePath: i + '/format',
          schemaPath: '#/properties/format/const',
          keyword: 'const',
          params: { allowedValue: 1 },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.title !== void 0) {
      let d = o.title;
      if (typeof d == 'string') {
        if (!u.test(d)) {
          let a = {
            instancePath: i + '/title',
            schemaPath: '#/properties/title/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
      } else {
        let a = {
          instancePath: i + '/title',
          schemaPath: '#/properties/title/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.uses !== void 0) {
      let d = o.uses;
      if (Array.isArray(d)) {
        if (d.length < 1) {
          let Z = {
            instancePath: i + '/uses',
            schemaPath: '#/properties/uses/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [Z]) : e.push(Z), t++);
        }
        let a = d.length;
        for (let Z = 0; Z < a; Z++) {
          let k = d[Z];
          if (typeof k == 'string') {
            if (!u.test(k)) {
              let x = {
                instancePath: i + '/uses/' + Z,
                schemaPath: '#/properties/uses/items/pattern',
                keyword: 'pattern',
                params: { pattern: '\\S' },
              };
              (e === null ? (e = [x]) : e.push(x), t++);
            }
          } else {
            let x = {
              instancePath: i + '/uses/' + Z,
              schemaPath: '#/properties/uses/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [x]) : e.push(x), t++);
          }
        }
        let g = d.length,
          c;
        if (g > 1) {
          let Z = {};
          for (; g--;) {
            let k = d[g];
            if (typeof k == 'string') {
              if (typeof Z[k] == 'number') {
                c = Z[k];
                let x = {
                  instancePath: i + '/uses',
                  schemaPath: '#/properties/uses/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: g, j: c },
                };
                (e === null ? (e = [x]) : e.push(x), t++);
                break;
              }
              Z[k] = g;
            }
          }
        }
      } else {
        let a = {
          instancePath: i + '/uses',
          schemaPath: '#/properties/uses/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.sources !== void 0) {
      let d = o.sources;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/sources',
            schemaPath: '#/properties/sources/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/sources',
                schemaPath: '#/properties/sources/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/sources',
              schemaPath: '#/properties/sources/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var r = g === t;
          if (!r) {
            let c = {
              instancePath: i + '/sources',
              schemaPath: '#/properties/sources/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/sources',
          schemaPath: '#/properties/sources/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.entries !== void 0) {
      let d = o.entries;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/entries',
            schemaPath: '#/properties/entries/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/entries',
                schemaPath: '#/properties/entries/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/entries',
              schemaPath: '#/properties/entries/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var s = g === t;
          if (!s) {
            let c = {
              instancePath: i + '/entries',
              schemaPath: '#/properties/entries/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/entries',
          schemaPath: '#/properties/entries/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.instruments !== void 0) {
      let d = o.instruments;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/instruments',
            schemaPath: '#/properties/instruments/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/instruments',
                schemaPath: '#/properties/instruments/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/instruments',
              schemaPath: '#/properties/instruments/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var n = g === t;
          if (!n) {
            let c = {
              instancePath: i + '/instruments',
              schemaPath: '#/properties/instruments/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/instruments',
          schemaPath: '#/properties/instruments/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.loads !== void 0) {
      let d = o.loads;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/loads',
            schemaPath: '#/properties/loads/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/loads',
                schemaPath: '#/properties/loads/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/loads',
              schemaPath: '#/properties/loads/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var p = g === t;
          if (!p) {
            let c = {
              instancePath: i + '/loads',
              schemaPath: '#/properties/loads/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/loads',
          schemaPath: '#/properties/loads/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.parts !== void 0) {
      let d = o.parts;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/parts',
            schemaPath: '#/properties/parts/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/parts',
                schemaPath: '#/properties/parts/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/parts',
              schemaPath: '#/properties/parts/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var l = g === t;
          if (!l) {
            let c = {
              instancePath: i + '/parts',
              schemaPath: '#/properties/parts/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/parts',
          schemaPath: '#/properties/parts/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.connectors !== void 0) {
      let d = o.connectors;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/connectors',
            schemaPath: '#/properties/connectors/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/connectors',
                schemaPath: '#/properties/connectors/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/connectors',
              schemaPath: '#/properties/connectors/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var f = g === t;
          if (!f) {
            let c = {
              instancePath: i + '/connectors',
              schemaPath: '#/properties/connectors/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/connectors',
          schemaPath: '#/properties/connectors/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.assemblies !== void 0) {
      let d = o.assemblies;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/assemblies',
            schemaPath: '#/properties/assemblies/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/assemblies',
                schemaPath: '#/properties/assemblies/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/assemblies',
              schemaPath: '#/properties/assemblies/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var m = g === t;
          if (!m) {
            let c = {
              instancePath: i + '/assemblies',
              schemaPath: '#/properties/assemblies/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
        for (let a in d) {
          let g = d[a],
            c = t,
            Z = !1,
            k = t;
          if (typeof g == 'string') {
            if (!v.test(g)) {
              let z = {
                instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath: '#/properties/assemblies/additionalProperties/anyOf/0/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [z]) : e.push(z), t++);
            }
          } else {
            let z = {
              instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/assemblies/additionalProperties/anyOf/0/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [z]) : e.push(z), t++);
          }
          var w = k === t;
          Z = Z || w;
          let x = t;
          if (Array.isArray(g)) {
            if (g.length < 1) {
              let S = {
                instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/minItems',
                keyword: 'minItems',
                params: { limit: 1 },
              };
              (e === null ? (e = [S]) : e.push(S), t++);
            }
            let z = g.length;
            for (let S = 0; S < z; S++) {
              let N = g[S];
              if (typeof N == 'string') {
                if (!v.test(N)) {
                  let I = {
                    instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + S,
                    schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/items/pattern',
                    keyword: 'pattern',
                    params: {
                      pattern:
                        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                    },
                  };
                  (e === null ? (e = [I]) : e.push(I), t++);
                }
              } else {
                let I = {
                  instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + S,
                  schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/items/type',
                  keyword: 'type',
                  params: { type: 'string' },
                };
                (e === null ? (e = [I]) : e.push(I), t++);
              }
            }
            let O = g.length,
              D;
            if (O > 1) {
              let S = {};
              for (; O--;) {
                let N = g[O];
                if (typeof N == 'string') {
                  if (typeof S[N] == 'number') {
                    D = S[N];
                    let I = {
                      instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
                      schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/uniqueItems',
                      keyword: 'uniqueItems',
                      params: { i: O, j: D },
                    };
                    (e === null ? (e = [I]) : e.push(I), t++);
                    break;
                  }
                  S[N] = O;
                }
              }
            }
          } else {
            let z = {
              instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/assemblies/additionalProperties/anyOf/1/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            (e === null ? (e = [z]) : e.push(z), t++);
          }
          var w = x === t;
          if (((Z = Z || w), Z)) ((t = c), e !== null && (c ? (e.length = c) : (e = null)));
          else {
            let z = {
              instancePath: i + '/assemblies/' + a.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/assemblies/additionalProperties/anyOf',
              keyword: 'anyOf',
              params: {},
            };
            (e === null ? (e = [z]) : e.push(z), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/assemblies',
          schemaPath: '#/properties/assemblies/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.loops !== void 0) {
      let d = o.loops;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/loops',
            schemaPath: '#/properties/loops/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/loops',
                schemaPath: '#/properties/loops/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/loops',
              schemaPath: '#/properties/loops/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var A = g === t;
          if (!A) {
            let c = {
              instancePath: i + '/loops',
              schemaPath: '#/properties/loops/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/loops',
          schemaPath: '#/properties/loops/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
    if (o.routines !== void 0) {
      let d = o.routines;
      if (d && typeof d == 'object' && !Array.isArray(d)) {
        if (Object.keys(d).length < 1) {
          let a = {
            instancePath: i + '/routines',
            schemaPath: '#/properties/routines/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [a]) : e.push(a), t++);
        }
        for (let a in d) {
          let g = t;
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let c = {
                instancePath: i + '/routines',
                schemaPath: '#/properties/routines/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: a,
              };
              (e === null ? (e = [c]) : e.push(c), t++);
            }
          } else {
            let c = {
              instancePath: i + '/routines',
              schemaPath: '#/properties/routines/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: a,
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
          var y = g === t;
          if (!y) {
            let c = {
              instancePath: i + '/routines',
              schemaPath: '#/properties/routines/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: a },
            };
            (e === null ? (e = [c]) : e.push(c), t++);
          }
        }
      } else {
        let a = {
          instancePath: i + '/routines',
          schemaPath: '#/properties/routines/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [a]) : e.push(a), t++);
      }
    }
  } else {
    let d = { instancePath: i, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    (e === null ? (e = [d]) : e.push(d), t++);
  }
  return ((V.errors = e), t === 0);
}
V.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Qe = F;
function F(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = F.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.voltage === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/required',
        keyword: 'required',
        params: { missingProperty: 'voltage' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.feeds === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/required',
        keyword: 'required',
        params: { missingProperty: 'feeds' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!(s === 'kind' || s === 'voltage' || s === 'feeds' || s === 'wait' || s === 'reserve')) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.kind !== void 0) {
      let s = o.kind;
      if (typeof s != 'string') {
        let n = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
      if (s !== 'battery') {
        let n = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'battery' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.voltage !== void 0 && typeof o.voltage != 'string') {
      let s = {
        instancePath: i + '/voltage',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/voltage/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.feeds !== void 0) {
      let s = o.feeds,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let m = {
            instancePath: i + '/feeds',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/feeds/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/feeds',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/feeds/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (Array.isArray(s)) {
        if (s.length < 1) {
          let y = {
            instancePath: i + '/feeds',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/feeds/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [y]) : e.push(y), t++);
        }
        let m = s.length;
        for (let y = 0; y < m; y++) {
          let d = s[y];
          if (typeof d == 'string') {
            if (!v.test(d)) {
              let a = {
                instancePath: i + '/feeds/' + y,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/feeds/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [a]) : e.push(a), t++);
            }
          } else {
            let a = {
              instancePath: i + '/feeds/' + y,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/feeds/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [a]) : e.push(a), t++);
          }
        }
        let w = s.length,
          A;
        if (w > 1) {
          let y = {};
          for (; w--;) {
            let d = s[w];
            if (typeof d == 'string') {
              if (typeof y[d] == 'number') {
                A = y[d];
                let a = {
                  instancePath: i + '/feeds',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/feeds/anyOf/1/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: w, j: A },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
                break;
              }
              y[d] = w;
            }
          }
        }
      } else {
        let m = {
          instancePath: i + '/feeds',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/feeds/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/feeds',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/feeds/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o.wait !== void 0 && typeof o.wait != 'string') {
      let s = {
        instancePath: i + '/wait',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/wait/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.reserve !== void 0) {
      let s = o.reserve;
      if (s && typeof s == 'object' && !Array.isArray(s)) {
        if (s.capacitance === void 0) {
          let n = {
            instancePath: i + '/reserve',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/required',
            keyword: 'required',
            params: { missingProperty: 'capacitance' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s['charged-to'] === void 0) {
          let n = {
            instancePath: i + '/reserve',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/required',
            keyword: 'required',
            params: { missingProperty: 'charged-to' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s.bleed === void 0) {
          let n = {
            instancePath: i + '/reserve',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/required',
            keyword: 'required',
            params: { missingProperty: 'bleed' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s['safe-below'] === void 0) {
          let n = {
            instancePath: i + '/reserve',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/required',
            keyword: 'required',
            params: { missingProperty: 'safe-below' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        for (let n in s)
          if (!(n === 'capacitance' || n === 'charged-to' || n === 'bleed' || n === 'safe-below')) {
            let p = {
              instancePath: i + '/reserve',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: n },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        if (s.capacitance !== void 0 && typeof s.capacitance != 'string') {
          let n = {
            instancePath: i + '/reserve/capacitance',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/properties/capacitance/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s['charged-to'] !== void 0 && typeof s['charged-to'] != 'string') {
          let n = {
            instancePath: i + '/reserve/charged-to',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/properties/charged-to/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s.bleed !== void 0 && typeof s.bleed != 'string') {
          let n = {
            instancePath: i + '/reserve/bleed',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/properties/bleed/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s['safe-below'] !== void 0 && typeof s['safe-below'] != 'string') {
          let n = {
            instancePath: i + '/reserve/safe-below',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/properties/safe-below/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/reserve',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/properties/reserve/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/battery/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((F.errors = e), t === 0);
}
F.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Te = R;
function R(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = R.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.voltage === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/required',
        keyword: 'required',
        params: { missingProperty: 'voltage' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o['isolated-by'] === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/required',
        keyword: 'required',
        params: { missingProperty: 'isolated-by' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.wait === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/required',
        keyword: 'required',
        params: { missingProperty: 'wait' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!(
        s === 'kind' ||
        s === 'voltage' ||
        s === 'feeds' ||
        s === 'isolated-by' ||
        s === 'wait' ||
        s === 'reserve' ||
        s === 'safe-below'
      )) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.kind !== void 0) {
      let s = o.kind;
      if (typeof s != 'string') {
        let n = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
      if (s !== 'high-voltage') {
        let n = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'high-voltage' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.voltage !== void 0 && typeof o.voltage != 'string') {
      let s = {
        instancePath: i + '/voltage',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/voltage/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.feeds !== void 0) {
      let s = o.feeds,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let m = {
            instancePath: i + '/feeds',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/feeds/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/feeds',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/feeds/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (Array.isArray(s)) {
        if (s.length < 1) {
          let y = {
            instancePath: i + '/feeds',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/feeds/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [y]) : e.push(y), t++);
        }
        let m = s.length;
        for (let y = 0; y < m; y++) {
          let d = s[y];
          if (typeof d == 'string') {
            if (!v.test(d)) {
              let a = {
                instancePath: i + '/feeds/' + y,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/feeds/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [a]) : e.push(a), t++);
            }
          } else {
            let a = {
              instancePath: i + '/feeds/' + y,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/feeds/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [a]) : e.push(a), t++);
          }
        }
        let w = s.length,
          A;
        if (w > 1) {
          let y = {};
          for (; w--;) {
            let d = s[w];
            if (typeof d == 'string') {
              if (typeof y[d] == 'number') {
                A = y[d];
                let a = {
                  instancePath: i + '/feeds',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/feeds/anyOf/1/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: w, j: A },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
                break;
              }
              y[d] = w;
            }
          }
        }
      } else {
        let m = {
          instancePath: i + '/feeds',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/feeds/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/feeds',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/feeds/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o['isolated-by'] !== void 0) {
      let s = o['isolated-by'];
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/isolated-by',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/isolated-by/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/isolated-by',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/isolated-by/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.wait !== void 0 && typeof o.wait != 'string') {
      let s = {
        instancePath: i + '/wait',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/wait/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.reserve !== void 0) {
      let s = o.reserve;
      if (s && typeof s == 'object' && !Array.isArray(s)) {
        if (s.capacitance === void 0) {
          let n = {
            instancePath: i + '/reserve',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/reserve/required',
            keyword: 'required',
            params: { missingProperty: 'capacitance' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s['charged-to'] === void 0) {
          let n = {
            instancePath: i + '/reserve',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/reserve/required',
            keyword: 'required',
            params: { missingProperty: 'charged-to' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s.bleed === void 0) {
          let n = {
            instancePath: i + '/reserve',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/reserve/required',
            keyword: 'required',
            params: { missingProperty: 'bleed' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        for (let n in s)
          if (!(n === 'capacitance' || n === 'charged-to' || n === 'bleed')) {
            let p = {
              instancePath: i + '/reserve',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/reserve/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: n },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        if (s.capacitance !== void 0 && typeof s.capacitance != 'string') {
          let n = {
            instancePath: i + '/reserve/capacitance',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/reserve/properties/capacitance/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s['charged-to'] !== void 0 && typeof s['charged-to'] != 'string') {
          let n = {
            instancePath: i + '/reserve/charged-to',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/reserve/properties/charged-to/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (s.bleed !== void 0 && typeof s.bleed != 'string') {
          let n = {
            instancePath: i + '/reserve/bleed',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/reserve/properties/bleed/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/reserve',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/reserve/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o['safe-below'] !== void 0 && typeof o['safe-below'] != 'string') {
      let s = {
        instancePath: i + '/safe-below',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/properties/safe-below/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/high-voltage/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((R.errors = e), t === 0);
}
R.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ue = B;
var Ws = {
  type: 'object',
  properties: {
    kind: { type: 'string', const: 'regulated' },
    voltage: { type: 'string' },
    from: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    needs: { type: 'string', enum: ['ignition-on'] },
    'after-run': { type: 'string' },
  },
  required: ['kind', 'voltage', 'from'],
  additionalProperties: !1,
};
function B(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = B.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.voltage === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/required',
        keyword: 'required',
        params: { missingProperty: 'voltage' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.from === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/required',
        keyword: 'required',
        params: { missingProperty: 'from' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'voltage' || r === 'from' || r === 'needs' || r === 'after-run')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'regulated') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'regulated' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.voltage !== void 0 && typeof o.voltage != 'string') {
      let r = {
        instancePath: i + '/voltage',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/properties/voltage/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.from !== void 0) {
      let r = o.from;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/from',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/properties/from/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/from',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/properties/from/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.needs !== void 0) {
      let r = o.needs;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/needs',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/properties/needs/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'ignition-on') {
        let s = {
          instancePath: i + '/needs',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/properties/needs/enum',
          keyword: 'enum',
          params: { allowedValues: Ws.properties.needs.enum },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o['after-run'] !== void 0 && typeof o['after-run'] != 'string') {
      let r = {
        instancePath: i + '/after-run',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/properties/after-run/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/regulated/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((B.errors = e), t === 0);
}
B.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var We = C;
function C(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = C.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.range === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/required',
        keyword: 'required',
        params: { missingProperty: 'range' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.accuracy === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/required',
        keyword: 'required',
        params: { missingProperty: 'accuracy' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resolution === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/required',
        keyword: 'required',
        params: { missingProperty: 'resolution' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(
        r === 'kind' ||
        r === 'range' ||
        r === 'accuracy' ||
        r === 'resolution' ||
        r === 'test-current' ||
        r === 'codes' ||
        r === 'leak'
      )) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'monitor') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'monitor' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.range !== void 0 && typeof o.range != 'string') {
      let r = {
        instancePath: i + '/range',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/range/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.accuracy !== void 0 && typeof o.accuracy != 'string') {
      let r = {
        instancePath: i + '/accuracy',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/accuracy/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resolution !== void 0 && typeof o.resolution != 'string') {
      let r = {
        instancePath: i + '/resolution',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/resolution/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o['test-current'] !== void 0 && typeof o['test-current'] != 'string') {
      let r = {
        instancePath: i + '/test-current',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/test-current/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.codes !== void 0) {
      let r = o.codes;
      if (r && typeof r == 'object' && !Array.isArray(r)) {
        if (Object.keys(r).length < 1) {
          let s = {
            instancePath: i + '/codes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/codes/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        for (let s in r)
          if (!(s === 'too-low' || s === 'too-high')) {
            let n = {
              instancePath: i + '/codes',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/codes/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: s },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        if (r['too-low'] !== void 0 && typeof r['too-low'] != 'string') {
          let s = {
            instancePath: i + '/codes/too-low',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/codes/properties/too-low/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r['too-high'] !== void 0 && typeof r['too-high'] != 'string') {
          let s = {
            instancePath: i + '/codes/too-high',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/codes/properties/too-high/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/codes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/codes/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.leak !== void 0 && typeof o.leak != 'string') {
      let r = {
        instancePath: i + '/leak',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/properties/leak/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/monitor/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((C.errors = e), t === 0);
}
C.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Xe = G;
function G(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = G.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance' || r === 'voltage' || r === 'leads' || r === 'zeroed')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'multimeter') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'multimeter' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0) {
      let r = o.resistance;
      if (r && typeof r == 'object' && !Array.isArray(r)) {
        if (r.range === void 0) {
          let s = {
            instancePath: i + '/resistance',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/required',
            keyword: 'required',
            params: { missingProperty: 'range' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.accuracy === void 0) {
          let s = {
            instancePath: i + '/resistance',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/required',
            keyword: 'required',
            params: { missingProperty: 'accuracy' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.resolution === void 0) {
          let s = {
            instancePath: i + '/resistance',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/required',
            keyword: 'required',
            params: { missingProperty: 'resolution' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        for (let s in r)
          if (!(
            s === 'range' ||
            s === 'accuracy' ||
            s === 'resolution' ||
            s === 'test-current' ||
            s === 'further'
          )) {
            let n = {
              instancePath: i + '/resistance',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: s },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        if (r.range !== void 0 && typeof r.range != 'string') {
          let s = {
            instancePath: i + '/resistance/range',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/range/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.accuracy !== void 0 && typeof r.accuracy != 'string') {
          let s = {
            instancePath: i + '/resistance/accuracy',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/accuracy/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.resolution !== void 0 && typeof r.resolution != 'string') {
          let s = {
            instancePath: i + '/resistance/resolution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/resolution/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r['test-current'] !== void 0 && typeof r['test-current'] != 'string') {
          let s = {
            instancePath: i + '/resistance/test-current',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/test-current/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.further !== void 0) {
          let s = r.further;
          if (Array.isArray(s)) {
            if (s.length < 1) {
              let p = {
                instancePath: i + '/resistance/further',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/minItems',
                keyword: 'minItems',
                params: { limit: 1 },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
            let n = s.length;
            for (let p = 0; p < n; p++) {
              let l = s[p];
              if (l && typeof l == 'object' && !Array.isArray(l)) {
                if (l.range === void 0) {
                  let f = {
                    instancePath: i + '/resistance/further/' + p,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/items/required',
                    keyword: 'required',
                    params: { missingProperty: 'range' },
                  };
                  (e === null ? (e = [f]) : e.push(f), t++);
                }
                if (l.accuracy === void 0) {
                  let f = {
                    instancePath: i + '/resistance/further/' + p,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/items/required',
                    keyword: 'required',
                    params: { missingProperty: 'accuracy' },
                  };
                  (e === null ? (e = [f]) : e.push(f), t++);
                }
                if (l.resolution === void 0) {
                  let f = {
                    instancePath: i + '/resistance/further/' + p,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/items/required',
                    keyword: 'required',
                    params: { missingProperty: 'resolution' },
                  };
                  (e === null ? (e = [f]) : e.push(f), t++);
                }
                for (let f in l)
                  if (!(f === 'range' || f === 'accuracy' || f === 'resolution')) {
                    let m = {
                      instancePath: i + '/resistance/further/' + p,
                      schemaPath:
                        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/items/additionalProperties',
                      keyword: 'additionalProperties',
                      params: { additionalProperty: f },
                    };
                    (e === null ? (e = [m]) : e.push(m), t++);
                  }
                if (l.range !== void 0 && typeof l.range != 'string') {
                  let f = {
                    instancePath: i + '/resistance/further/' + p + '/range',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/items/properties/range/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [f]) : e.push(f), t++);
                }
                if (l.accuracy !== void 0 && typeof l.accuracy != 'string') {
                  let f = {
                    instancePath: i + '/resistance/further/' + p + '/accuracy',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/items/properties/accuracy/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [f]) : e.push(f), t++);
                }
                if (l.resolution !== void 0 && typeof l.resolution != 'string') {
                  let f = {
                    instancePath: i + '/resistance/further/' + p + '/resolution',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/items/properties/resolution/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [f]) : e.push(f), t++);
                }
              } else {
                let f = {
                  instancePath: i + '/resistance/further/' + p,
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/items/type',
                  keyword: 'type',
                  params: { type: 'object' },
                };
                (e === null ? (e = [f]) : e.push(f), t++);
              }
            }
          } else {
            let n = {
              instancePath: i + '/resistance/further',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/properties/further/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        }
      } else {
        let s = {
          instancePath: i + '/resistance',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/resistance/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.voltage !== void 0) {
      let r = o.voltage;
      if (r && typeof r == 'object' && !Array.isArray(r)) {
        if (r.range === void 0) {
          let s = {
            instancePath: i + '/voltage',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/required',
            keyword: 'required',
            params: { missingProperty: 'range' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.accuracy === void 0) {
          let s = {
            instancePath: i + '/voltage',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/required',
            keyword: 'required',
            params: { missingProperty: 'accuracy' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.resolution === void 0) {
          let s = {
            instancePath: i + '/voltage',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/required',
            keyword: 'required',
            params: { missingProperty: 'resolution' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.input === void 0) {
          let s = {
            instancePath: i + '/voltage',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/required',
            keyword: 'required',
            params: { missingProperty: 'input' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        for (let s in r)
          if (!(s === 'range' || s === 'accuracy' || s === 'resolution' || s === 'input')) {
            let n = {
              instancePath: i + '/voltage',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: s },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        if (r.range !== void 0 && typeof r.range != 'string') {
          let s = {
            instancePath: i + '/voltage/range',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/properties/range/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.accuracy !== void 0 && typeof r.accuracy != 'string') {
          let s = {
            instancePath: i + '/voltage/accuracy',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/properties/accuracy/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.resolution !== void 0 && typeof r.resolution != 'string') {
          let s = {
            instancePath: i + '/voltage/resolution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/properties/resolution/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        if (r.input !== void 0 && typeof r.input != 'string') {
          let s = {
            instancePath: i + '/voltage/input',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/properties/input/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/voltage',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/voltage/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.leads !== void 0 && typeof o.leads != 'string') {
      let r = {
        instancePath: i + '/leads',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/leads/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.zeroed !== void 0) {
      let r = o.zeroed;
      if (typeof r != 'boolean') {
        let s = {
          instancePath: i + '/zeroed',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/zeroed/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== !0) {
        let s = {
          instancePath: i + '/zeroed',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/properties/zeroed/const',
          keyword: 'const',
          params: { allowedValue: !0 },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/multimeter/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((G.errors = e), t === 0);
}
G.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ye = H;
function H(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = H.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-resistance/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-resistance/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance' || r === 'opens-shorting-bar')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-resistance/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-resistance/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'lamp') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-resistance/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'lamp' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-resistance/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o['opens-shorting-bar'] !== void 0 && typeof o['opens-shorting-bar'] != 'boolean') {
      let r = {
        instancePath: i + '/opens-shorting-bar',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-resistance/properties/opens-shorting-bar/type',
        keyword: 'type',
        params: { type: 'boolean' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath:
        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-resistance/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((H.errors = e), t === 0);
}
H.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var es = J;
function J(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = J.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-rating/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.rated === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-rating/required',
        keyword: 'required',
        params: { missingProperty: 'rated' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'rated' || r === 'opens-shorting-bar')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-rating/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-rating/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'lamp') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-rating/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'lamp' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.rated !== void 0 && typeof o.rated != 'string') {
      let r = {
        instancePath: i + '/rated',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-rating/properties/rated/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o['opens-shorting-bar'] !== void 0 && typeof o['opens-shorting-bar'] != 'boolean') {
      let r = {
        instancePath: i + '/opens-shorting-bar',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-rating/properties/opens-shorting-bar/type',
        keyword: 'type',
        params: { type: 'boolean' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-load-by-rating/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((J.errors = e), t === 0);
}
J.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ss = K;
var Xs = {
  type: 'object',
  properties: {
    kind: { type: 'string', const: 'resistor' },
    resistance: { type: 'string' },
    series: { type: 'string', enum: ['E6', 'E12', 'E24', 'E48', 'E96', 'E192'] },
    'opens-shorting-bar': { type: 'boolean' },
  },
  required: ['kind', 'resistance'],
  additionalProperties: !1,
};
function K(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = K.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance' || r === 'series' || r === 'opens-shorting-bar')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'resistor') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'resistor' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.series !== void 0) {
      let r = o.series;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/series',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/properties/series/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (!(r === 'E6' || r === 'E12' || r === 'E24' || r === 'E48' || r === 'E96' || r === 'E192')) {
        let s = {
          instancePath: i + '/series',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/properties/series/enum',
          keyword: 'enum',
          params: { allowedValues: Xs.properties.series.enum },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o['opens-shorting-bar'] !== void 0 && typeof o['opens-shorting-bar'] != 'boolean') {
      let r = {
        instancePath: i + '/opens-shorting-bar',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/properties/opens-shorting-bar/type',
        keyword: 'type',
        params: { type: 'boolean' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor-load/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((K.errors = e), t === 0);
}
K.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ts = L;
function L(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = L.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.wire === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/required',
        keyword: 'required',
        params: { missingProperty: 'wire' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.length === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/required',
        keyword: 'required',
        params: { missingProperty: 'length' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'wire' || r === 'length' || r === 'temperature')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'cable') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'cable' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.wire !== void 0 && typeof o.wire != 'string') {
      let r = {
        instancePath: i + '/wire',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/properties/wire/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.length !== void 0 && typeof o.length != 'string') {
      let r = {
        instancePath: i + '/length',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/properties/length/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.temperature !== void 0 && typeof o.temperature != 'string') {
      let r = {
        instancePath: i + '/temperature',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/properties/temperature/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-size/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((L.errors = e), t === 0);
}
L.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var rs = Q;
function Q(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Q.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-resistance/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-resistance/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-resistance/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-resistance/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'cable') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-resistance/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'cable' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-resistance/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/cable-by-resistance/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((Q.errors = e), t === 0);
}
Q.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var is = T;
function T(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = T.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rotary-coupling/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rotary-coupling/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rotary-coupling/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rotary-coupling/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'rotary-coupling') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rotary-coupling/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'rotary-coupling' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rotary-coupling/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rotary-coupling/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((T.errors = e), t === 0);
}
T.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var os = U;
function U(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = U.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/series/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/series/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/series/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/series/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'series') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/series/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'series' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/series/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/series/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((U.errors = e), t === 0);
}
U.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ns = W;
function W(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = W.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.live === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/required',
        keyword: 'required',
        params: { missingProperty: 'live' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance' || r === 'live' || r === 'no-fire')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'initiator') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'initiator' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.live !== void 0 && typeof o.live != 'boolean') {
      let r = {
        instancePath: i + '/live',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/properties/live/type',
        keyword: 'type',
        params: { type: 'boolean' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o['no-fire'] !== void 0 && typeof o['no-fire'] != 'string') {
      let r = {
        instancePath: i + '/no-fire',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/properties/no-fire/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/initiator/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((W.errors = e), t === 0);
}
W.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var as = X;
function X(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = X.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.voltage === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/required',
        keyword: 'required',
        params: { missingProperty: 'voltage' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.live === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/required',
        keyword: 'required',
        params: { missingProperty: 'live' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'voltage' || r === 'resistance' || r === 'live')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'hv-section') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'hv-section' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.voltage !== void 0 && typeof o.voltage != 'string') {
      let r = {
        instancePath: i + '/voltage',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/properties/voltage/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.live !== void 0) {
      let r = o.live;
      if (typeof r != 'boolean') {
        let s = {
          instancePath: i + '/live',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/properties/live/type',
          keyword: 'type',
          params: { type: 'boolean' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== !0) {
        let s = {
          instancePath: i + '/live',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/properties/live/const',
          keyword: 'const',
          params: { allowedValue: !0 },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/hv-section/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((X.errors = e), t === 0);
}
X.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ps = Y;
var Ys = {
  type: 'object',
  properties: {
    kind: { type: 'string', const: 'resistor' },
    resistance: { type: 'string' },
    series: { type: 'string', enum: ['E6', 'E12', 'E24', 'E48', 'E96', 'E192'] },
  },
  required: ['kind', 'resistance'],
  additionalProperties: !1,
};
function Y(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Y.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance' || r === 'series')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'resistor') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'resistor' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.series !== void 0) {
      let r = o.series;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/series',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/properties/series/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (!(r === 'E6' || r === 'E12' || r === 'E24' || r === 'E48' || r === 'E96' || r === 'E192')) {
        let s = {
          instancePath: i + '/series',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/properties/series/enum',
          keyword: 'enum',
          params: { allowedValues: Ys.properties.series.enum },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/resistor/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((Y.errors = e), t === 0);
}
Y.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ds = ee;
function ee(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ee.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/heater/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/heater/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/heater/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/heater/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'heater') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/heater/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'heater' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/heater/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/heater/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ee.errors = e), t === 0);
}
ee.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var hs = se;
function se(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = se.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/switch/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/switch/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/switch/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/switch/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'switch') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/switch/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'switch' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/switch/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/switch/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((se.errors = e), t === 0);
}
se.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ls = te;
function te(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = te.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance' || r === 'at' || r === 'temperature')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'coil') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'coil' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.at !== void 0 && typeof o.at != 'string') {
      let r = {
        instancePath: i + '/at',
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/properties/at/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.temperature !== void 0 && typeof o.temperature != 'string') {
      let r = {
        instancePath: i + '/temperature',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/properties/temperature/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/coil/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((te.errors = e), t === 0);
}
te.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var cs = re;
function re(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = re.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.r25 === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/required',
        keyword: 'required',
        params: { missingProperty: 'r25' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.beta === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/required',
        keyword: 'required',
        params: { missingProperty: 'beta' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'r25' || r === 'beta' || r === 'tolerance' || r === 'temperature')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'thermistor') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'thermistor' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.r25 !== void 0 && typeof o.r25 != 'string') {
      let r = {
        instancePath: i + '/r25',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/properties/r25/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.beta !== void 0 && typeof o.beta != 'string') {
      let r = {
        instancePath: i + '/beta',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/properties/beta/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.tolerance !== void 0 && typeof o.tolerance != 'string') {
      let r = {
        instancePath: i + '/tolerance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/properties/tolerance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.temperature !== void 0 && typeof o.temperature != 'string') {
      let r = {
        instancePath: i + '/temperature',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/properties/temperature/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-beta/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((re.errors = e), t === 0);
}
re.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ms = ie;
function ie(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ie.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.coefficients === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/required',
        keyword: 'required',
        params: { missingProperty: 'coefficients' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.tolerance === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/required',
        keyword: 'required',
        params: { missingProperty: 'tolerance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'coefficients' || r === 'tolerance' || r === 'temperature')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'thermistor') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'thermistor' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.coefficients !== void 0) {
      let r = o.coefficients;
      if (Array.isArray(r)) {
        if (r.length > 3) {
          let n = {
            instancePath: i + '/coefficients',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/properties/coefficients/maxItems',
            keyword: 'maxItems',
            params: { limit: 3 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (r.length < 3) {
          let n = {
            instancePath: i + '/coefficients',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/properties/coefficients/minItems',
            keyword: 'minItems',
            params: { limit: 3 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        let s = r.length;
        for (let n = 0; n < s; n++) {
          let p = r[n];
          if (!(typeof p == 'number' && isFinite(p))) {
            let l = {
              instancePath: i + '/coefficients/' + n,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/properties/coefficients/items/type',
              keyword: 'type',
              params: { type: 'number' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
      } else {
        let s = {
          instancePath: i + '/coefficients',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/properties/coefficients/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.tolerance !== void 0 && typeof o.tolerance != 'string') {
      let r = {
        instancePath: i + '/tolerance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/properties/tolerance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.temperature !== void 0 && typeof o.temperature != 'string') {
      let r = {
        instancePath: i + '/temperature',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/properties/temperature/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath:
        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/thermistor-by-coefficients/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ie.errors = e), t === 0);
}
ie.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var us = oe;
var et = {
  type: 'object',
  properties: {
    kind: { type: 'string', const: 'rtd' },
    r0: { type: 'string' },
    class: { type: 'string', enum: ['AA', 'A', 'B'] },
    temperature: { type: 'string' },
  },
  required: ['kind', 'r0', 'class'],
  additionalProperties: !1,
};
function oe(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = oe.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.r0 === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/required',
        keyword: 'required',
        params: { missingProperty: 'r0' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.class === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/required',
        keyword: 'required',
        params: { missingProperty: 'class' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'r0' || r === 'class' || r === 'temperature')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'rtd') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'rtd' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.r0 !== void 0 && typeof o.r0 != 'string') {
      let r = {
        instancePath: i + '/r0',
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/properties/r0/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.class !== void 0) {
      let r = o.class;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/class',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/properties/class/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (!(r === 'AA' || r === 'A' || r === 'B')) {
        let s = {
          instancePath: i + '/class',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/properties/class/enum',
          keyword: 'enum',
          params: { allowedValues: et.properties.class.enum },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.temperature !== void 0 && typeof o.temperature != 'string') {
      let r = {
        instancePath: i + '/temperature',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/properties/temperature/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/rtd/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((oe.errors = e), t === 0);
}
oe.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var fs = ne;
function ne(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ne.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-resistance/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.resistance === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-resistance/required',
        keyword: 'required',
        params: { missingProperty: 'resistance' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'resistance')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-resistance/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-resistance/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'lamp') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-resistance/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'lamp' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.resistance !== void 0 && typeof o.resistance != 'string') {
      let r = {
        instancePath: i + '/resistance',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-resistance/properties/resistance/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-resistance/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ne.errors = e), t === 0);
}
ne.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ys = ae;
function ae(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ae.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.kind === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-rating/required',
        keyword: 'required',
        params: { missingProperty: 'kind' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.rated === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-rating/required',
        keyword: 'required',
        params: { missingProperty: 'rated' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'kind' || r === 'rated')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-rating/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.kind !== void 0) {
      let r = o.kind;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-rating/properties/kind/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (r !== 'lamp') {
        let s = {
          instancePath: i + '/kind',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-rating/properties/kind/const',
          keyword: 'const',
          params: { allowedValue: 'lamp' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.rated !== void 0 && typeof o.rated != 'string') {
      let r = {
        instancePath: i + '/rated',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-rating/properties/rated/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/lamp-by-rating/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ae.errors = e), t === 0);
}
ae.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var gs = pe;
var st = {
    type: 'object',
    properties: {
      contact: { type: 'string' },
      'shorting-bar': {
        type: 'object',
        properties: {
          side: {
            type: 'string',
            pattern:
              '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
          },
          closes: { type: 'string', enum: ['unlocked', 'unplugged'] },
          resistance: { type: 'string' },
          pins: {
            minItems: 2,
            maxItems: 2,
            type: 'array',
            items: {
              anyOf: [
                { type: 'string', pattern: '^[A-Za-z0-9-]+$' },
                { type: 'integer', minimum: 0, maximum: 9007199254740991 },
              ],
            },
          },
        },
        required: ['side', 'closes', 'resistance'],
        additionalProperties: !1,
      },
      sides: {
        minItems: 2,
        maxItems: 2,
        type: 'array',
        items: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
      },
      carries: {
        anyOf: [
          {
            type: 'string',
            pattern:
              '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
          },
          {
            minItems: 1,
            type: 'array',
            items: {
              type: 'string',
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
            uniqueItems: !0,
          },
        ],
      },
    },
    required: ['contact'],
    additionalProperties: !1,
  },
  Ce = new RegExp('^[A-Za-z0-9-]+$', 'u');
function pe(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = pe.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.contact === void 0) {
      let n = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/required',
        keyword: 'required',
        params: { missingProperty: 'contact' },
      };
      (e === null ? (e = [n]) : e.push(n), t++);
    }
    for (let n in o)
      if (!(n === 'contact' || n === 'shorting-bar' || n === 'sides' || n === 'carries')) {
        let p = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: n },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    if (o.contact !== void 0 && typeof o.contact != 'string') {
      let n = {
        instancePath: i + '/contact',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/contact/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [n]) : e.push(n), t++);
    }
    if (o['shorting-bar'] !== void 0) {
      let n = o['shorting-bar'];
      if (n && typeof n == 'object' && !Array.isArray(n)) {
        if (n.side === void 0) {
          let p = {
            instancePath: i + '/shorting-bar',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/required',
            keyword: 'required',
            params: { missingProperty: 'side' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        if (n.closes === void 0) {
          let p = {
            instancePath: i + '/shorting-bar',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/required',
            keyword: 'required',
            params: { missingProperty: 'closes' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        if (n.resistance === void 0) {
          let p = {
            instancePath: i + '/shorting-bar',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/required',
            keyword: 'required',
            params: { missingProperty: 'resistance' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        for (let p in n)
          if (!(p === 'side' || p === 'closes' || p === 'resistance' || p === 'pins')) {
            let l = {
              instancePath: i + '/shorting-bar',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: p },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        if (n.side !== void 0) {
          let p = n.side;
          if (typeof p == 'string') {
            if (!v.test(p)) {
              let l = {
                instancePath: i + '/shorting-bar/side',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/side/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/shorting-bar/side',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/side/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        if (n.closes !== void 0) {
          let p = n.closes;
          if (typeof p != 'string') {
            let l = {
              instancePath: i + '/shorting-bar/closes',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/closes/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
          if (!(p === 'unlocked' || p === 'unplugged')) {
            let l = {
              instancePath: i + '/shorting-bar/closes',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/closes/enum',
              keyword: 'enum',
              params: { allowedValues: st.properties['shorting-bar'].properties.closes.enum },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        if (n.resistance !== void 0 && typeof n.resistance != 'string') {
          let p = {
            instancePath: i + '/shorting-bar/resistance',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/resistance/type',
            keyword: 'type',
            params: { type: 'string' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        if (n.pins !== void 0) {
          let p = n.pins;
          if (Array.isArray(p)) {
            if (p.length > 2) {
              let f = {
                instancePath: i + '/shorting-bar/pins',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/maxItems',
                keyword: 'maxItems',
                params: { limit: 2 },
              };
              (e === null ? (e = [f]) : e.push(f), t++);
            }
            if (p.length < 2) {
              let f = {
                instancePath: i + '/shorting-bar/pins',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/minItems',
                keyword: 'minItems',
                params: { limit: 2 },
              };
              (e === null ? (e = [f]) : e.push(f), t++);
            }
            let l = p.length;
            for (let f = 0; f < l; f++) {
              let m = p[f],
                w = t,
                A = !1,
                y = t;
              if (typeof m == 'string') {
                if (!Ce.test(m)) {
                  let a = {
                    instancePath: i + '/shorting-bar/pins/' + f,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/items/anyOf/0/pattern',
                    keyword: 'pattern',
                    params: { pattern: '^[A-Za-z0-9-]+$' },
                  };
                  (e === null ? (e = [a]) : e.push(a), t++);
                }
              } else {
                let a = {
                  instancePath: i + '/shorting-bar/pins/' + f,
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/items/anyOf/0/type',
                  keyword: 'type',
                  params: { type: 'string' },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
              }
              var r = y === t;
              A = A || r;
              let d = t;
              if (!(typeof m == 'number' && !(m % 1) && !isNaN(m) && isFinite(m))) {
                let a = {
                  instancePath: i + '/shorting-bar/pins/' + f,
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/items/anyOf/1/type',
                  keyword: 'type',
                  params: { type: 'integer' },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
              }
              if (typeof m == 'number' && isFinite(m)) {
                if (m > 9007199254740991 || isNaN(m)) {
                  let a = {
                    instancePath: i + '/shorting-bar/pins/' + f,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/items/anyOf/1/maximum',
                    keyword: 'maximum',
                    params: { comparison: '<=', limit: 9007199254740991 },
                  };
                  (e === null ? (e = [a]) : e.push(a), t++);
                }
                if (m < 0 || isNaN(m)) {
                  let a = {
                    instancePath: i + '/shorting-bar/pins/' + f,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/items/anyOf/1/minimum',
                    keyword: 'minimum',
                    params: { comparison: '>=', limit: 0 },
                  };
                  (e === null ? (e = [a]) : e.push(a), t++);
                }
              }
              var r = d === t;
              if (((A = A || r), A)) ((t = w), e !== null && (w ? (e.length = w) : (e = null)));
              else {
                let a = {
                  instancePath: i + '/shorting-bar/pins/' + f,
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/items/anyOf',
                  keyword: 'anyOf',
                  params: {},
                };
                (e === null ? (e = [a]) : e.push(a), t++);
              }
            }
          } else {
            let l = {
              instancePath: i + '/shorting-bar/pins',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/properties/pins/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
      } else {
        let p = {
          instancePath: i + '/shorting-bar',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/shorting-bar/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.sides !== void 0) {
      let n = o.sides;
      if (Array.isArray(n)) {
        if (n.length > 2) {
          let l = {
            instancePath: i + '/sides',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/sides/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [l]) : e.push(l), t++);
        }
        if (n.length < 2) {
          let l = {
            instancePath: i + '/sides',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/sides/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [l]) : e.push(l), t++);
        }
        let p = n.length;
        for (let l = 0; l < p; l++) {
          let f = n[l];
          if (typeof f == 'string') {
            if (!v.test(f)) {
              let m = {
                instancePath: i + '/sides/' + l,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/sides/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [m]) : e.push(m), t++);
            }
          } else {
            let m = {
              instancePath: i + '/sides/' + l,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/sides/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [m]) : e.push(m), t++);
          }
        }
      } else {
        let p = {
          instancePath: i + '/sides',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/sides/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.carries !== void 0) {
      let n = o.carries,
        p = t,
        l = !1,
        f = t;
      if (typeof n == 'string') {
        if (!v.test(n)) {
          let w = {
            instancePath: i + '/carries',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/carries/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [w]) : e.push(w), t++);
        }
      } else {
        let w = {
          instancePath: i + '/carries',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/carries/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [w]) : e.push(w), t++);
      }
      var s = f === t;
      l = l || s;
      let m = t;
      if (Array.isArray(n)) {
        if (n.length < 1) {
          let d = {
            instancePath: i + '/carries',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/carries/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [d]) : e.push(d), t++);
        }
        let w = n.length;
        for (let d = 0; d < w; d++) {
          let a = n[d];
          if (typeof a == 'string') {
            if (!v.test(a)) {
              let g = {
                instancePath: i + '/carries/' + d,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/carries/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [g]) : e.push(g), t++);
            }
          } else {
            let g = {
              instancePath: i + '/carries/' + d,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/carries/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [g]) : e.push(g), t++);
          }
        }
        let A = n.length,
          y;
        if (A > 1) {
          let d = {};
          for (; A--;) {
            let a = n[A];
            if (typeof a == 'string') {
              if (typeof d[a] == 'number') {
                y = d[a];
                let g = {
                  instancePath: i + '/carries',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/carries/anyOf/1/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: A, j: y },
                };
                (e === null ? (e = [g]) : e.push(g), t++);
                break;
              }
              d[a] = A;
            }
          }
        }
      } else {
        let w = {
          instancePath: i + '/carries',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/carries/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [w]) : e.push(w), t++);
      }
      var s = m === t;
      if (((l = l || s), l)) ((t = p), e !== null && (p ? (e.length = p) : (e = null)));
      else {
        let w = {
          instancePath: i + '/carries',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/properties/carries/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [w]) : e.push(w), t++);
      }
    }
  } else {
    let n = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/connector/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [n]) : e.push(n), t++);
  }
  return ((pe.errors = e), t === 0);
}
pe.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ws = de;
function de(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = de.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.path === void 0) {
      let n = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/required',
        keyword: 'required',
        params: { missingProperty: 'path' },
      };
      (e === null ? (e = [n]) : e.push(n), t++);
    }
    for (let n in o)
      if (!(n === 'path' || n === 'pins')) {
        let p = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: n },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    if (o.path !== void 0) {
      let n = o.path;
      if (Array.isArray(n)) {
        if (n.length < 2) {
          let l = {
            instancePath: i + '/path',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/path/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [l]) : e.push(l), t++);
        }
        let p = n.length;
        for (let l = 0; l < p; l++) {
          let f = n[l];
          if (typeof f == 'string') {
            if (!v.test(f)) {
              let m = {
                instancePath: i + '/path/' + l,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/path/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [m]) : e.push(m), t++);
            }
          } else {
            let m = {
              instancePath: i + '/path/' + l,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/path/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [m]) : e.push(m), t++);
          }
        }
      } else {
        let p = {
          instancePath: i + '/path',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/path/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.pins !== void 0) {
      let n = o.pins;
      if (n && typeof n == 'object' && !Array.isArray(n)) {
        if (Object.keys(n).length < 1) {
          let p = {
            instancePath: i + '/pins',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        for (let p in n) {
          let l = t;
          if (typeof p == 'string') {
            if (!v.test(p)) {
              let f = {
                instancePath: i + '/pins',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: p,
              };
              (e === null ? (e = [f]) : e.push(f), t++);
            }
          } else {
            let f = {
              instancePath: i + '/pins',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: p,
            };
            (e === null ? (e = [f]) : e.push(f), t++);
          }
          var r = l === t;
          if (!r) {
            let f = {
              instancePath: i + '/pins',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: p },
            };
            (e === null ? (e = [f]) : e.push(f), t++);
          }
        }
        for (let p in n) {
          let l = n[p];
          if (Array.isArray(l)) {
            if (l.length > 2) {
              let m = {
                instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/maxItems',
                keyword: 'maxItems',
                params: { limit: 2 },
              };
              (e === null ? (e = [m]) : e.push(m), t++);
            }
            if (l.length < 2) {
              let m = {
                instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/minItems',
                keyword: 'minItems',
                params: { limit: 2 },
              };
              (e === null ? (e = [m]) : e.push(m), t++);
            }
            let f = l.length;
            for (let m = 0; m < f; m++) {
              let w = l[m],
                A = t,
                y = !1,
                d = t;
              if (typeof w == 'string') {
                if (!Ce.test(w)) {
                  let g = {
                    instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + m,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/items/anyOf/0/pattern',
                    keyword: 'pattern',
                    params: { pattern: '^[A-Za-z0-9-]+$' },
                  };
                  (e === null ? (e = [g]) : e.push(g), t++);
                }
              } else {
                let g = {
                  instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + m,
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/items/anyOf/0/type',
                  keyword: 'type',
                  params: { type: 'string' },
                };
                (e === null ? (e = [g]) : e.push(g), t++);
              }
              var s = d === t;
              y = y || s;
              let a = t;
              if (!(typeof w == 'number' && !(w % 1) && !isNaN(w) && isFinite(w))) {
                let g = {
                  instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + m,
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/items/anyOf/1/type',
                  keyword: 'type',
                  params: { type: 'integer' },
                };
                (e === null ? (e = [g]) : e.push(g), t++);
              }
              if (typeof w == 'number' && isFinite(w)) {
                if (w > 9007199254740991 || isNaN(w)) {
                  let g = {
                    instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + m,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/items/anyOf/1/maximum',
                    keyword: 'maximum',
                    params: { comparison: '<=', limit: 9007199254740991 },
                  };
                  (e === null ? (e = [g]) : e.push(g), t++);
                }
                if (w < 0 || isNaN(w)) {
                  let g = {
                    instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + m,
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/items/anyOf/1/minimum',
                    keyword: 'minimum',
                    params: { comparison: '>=', limit: 0 },
                  };
                  (e === null ? (e = [g]) : e.push(g), t++);
                }
              }
              var s = a === t;
              if (((y = y || s), y)) ((t = A), e !== null && (A ? (e.length = A) : (e = null)));
              else {
                let g = {
                  instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1') + '/' + m,
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/items/anyOf',
                  keyword: 'anyOf',
                  params: {},
                };
                (e === null ? (e = [g]) : e.push(g), t++);
              }
            }
          } else {
            let f = {
              instancePath: i + '/pins/' + p.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/additionalProperties/type',
              keyword: 'type',
              params: { type: 'array' },
            };
            (e === null ? (e = [f]) : e.push(f), t++);
          }
        }
      } else {
        let p = {
          instancePath: i + '/pins',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/properties/pins/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
  } else {
    let n = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/loop/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [n]) : e.push(n), t++);
  }
  return ((de.errors = e), t === 0);
}
de.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var vs = he;
var Be = new RegExp(
  '^(?:ground|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+)?)$',
  'u',
);
function he(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = he.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.part === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/required',
        keyword: 'required',
        params: { missingProperty: 'part' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.between === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/required',
        keyword: 'required',
        params: { missingProperty: 'between' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'part' || r === 'between')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.part !== void 0) {
      let r = o.part;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/part',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/properties/part/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/part',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/properties/part/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.between !== void 0) {
      let r = o.between;
      if (Array.isArray(r)) {
        if (r.length > 2) {
          let n = {
            instancePath: i + '/between',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/properties/between/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (r.length < 2) {
          let n = {
            instancePath: i + '/between',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/properties/between/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        let s = r.length;
        for (let n = 0; n < s; n++) {
          let p = r[n];
          if (typeof p == 'string') {
            if (!Be.test(p)) {
              let l = {
                instancePath: i + '/between/' + n,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/properties/between/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:ground|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+)?)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/between/' + n,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/properties/between/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
      } else {
        let s = {
          instancePath: i + '/between',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/properties/between/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-part/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((he.errors = e), t === 0);
}
he.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var ks = le;
function le(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = le.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.connector === void 0) {
      let s = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/required',
        keyword: 'required',
        params: { missingProperty: 'connector' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.pin === void 0) {
      let s = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/required',
        keyword: 'required',
        params: { missingProperty: 'pin' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.between === void 0) {
      let s = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/required',
        keyword: 'required',
        params: { missingProperty: 'between' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!(s === 'connector' || s === 'pin' || s === 'between')) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.connector !== void 0) {
      let s = o.connector;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/connector',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/connector/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/connector',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/connector/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.pin !== void 0) {
      let s = o.pin,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!Ce.test(s)) {
          let m = {
            instancePath: i + '/pin',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/pin/anyOf/0/pattern',
            keyword: 'pattern',
            params: { pattern: '^[A-Za-z0-9-]+$' },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/pin',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/pin/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (!(typeof s == 'number' && !(s % 1) && !isNaN(s) && isFinite(s))) {
        let m = {
          instancePath: i + '/pin',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/pin/anyOf/1/type',
          keyword: 'type',
          params: { type: 'integer' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      if (typeof s == 'number' && isFinite(s)) {
        if (s > 9007199254740991 || isNaN(s)) {
          let m = {
            instancePath: i + '/pin',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/pin/anyOf/1/maximum',
            keyword: 'maximum',
            params: { comparison: '<=', limit: 9007199254740991 },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
        if (s < 0 || isNaN(s)) {
          let m = {
            instancePath: i + '/pin',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/pin/anyOf/1/minimum',
            keyword: 'minimum',
            params: { comparison: '>=', limit: 0 },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/pin',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/pin/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o.between !== void 0) {
      let s = o.between;
      if (Array.isArray(s)) {
        if (s.length > 2) {
          let p = {
            instancePath: i + '/between',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/between/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        if (s.length < 2) {
          let p = {
            instancePath: i + '/between',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/between/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        let n = s.length;
        for (let p = 0; p < n; p++) {
          let l = s[p];
          if (typeof l == 'string') {
            if (!Be.test(l)) {
              let f = {
                instancePath: i + '/between/' + p,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/between/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:ground|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+)?)$',
                },
              };
              (e === null ? (e = [f]) : e.push(f), t++);
            }
          } else {
            let f = {
              instancePath: i + '/between/' + p,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/between/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [f]) : e.push(f), t++);
          }
        }
      } else {
        let n = {
          instancePath: i + '/between',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/properties/between/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-connector/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((le.errors = e), t === 0);
}
le.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var $s = ce;
function ce(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ce.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.source === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/required',
        keyword: 'required',
        params: { missingProperty: 'source' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.between === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/required',
        keyword: 'required',
        params: { missingProperty: 'between' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'source' || r === 'between')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.source !== void 0) {
      let r = o.source;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/source',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/properties/source/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/source',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/properties/source/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.between !== void 0) {
      let r = o.between;
      if (Array.isArray(r)) {
        if (r.length > 2) {
          let n = {
            instancePath: i + '/between',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/properties/between/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        if (r.length < 2) {
          let n = {
            instancePath: i + '/between',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/properties/between/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        let s = r.length;
        for (let n = 0; n < s; n++) {
          let p = r[n];
          if (typeof p == 'string') {
            if (!Be.test(p)) {
              let l = {
                instancePath: i + '/between/' + n,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/properties/between/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:ground|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+)?)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/between/' + n,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/properties/between/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
      } else {
        let s = {
          instancePath: i + '/between',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/properties/between/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/network-source/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ce.errors = e), t === 0);
}
ce.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ps = me;
function me(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = me.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.ask === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/required',
        keyword: 'required',
        params: { missingProperty: 'ask' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.range === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/required',
        keyword: 'required',
        params: { missingProperty: 'range' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.accuracy === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/required',
        keyword: 'required',
        params: { missingProperty: 'accuracy' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'ask' || r === 'range' || r === 'accuracy')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.ask !== void 0) {
      let r = o.ask;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/ask',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/properties/ask/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/ask',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/properties/ask/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.range !== void 0 && typeof o.range != 'string') {
      let r = {
        instancePath: i + '/range',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/properties/range/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.accuracy !== void 0 && typeof o.accuracy != 'string') {
      let r = {
        instancePath: i + '/accuracy',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/properties/accuracy/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/entry/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((me.errors = e), t === 0);
}
me.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var bs = ue,
  tt = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    type: 'object',
    properties: {
      needs: {
        type: 'object',
        propertyNames: {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        additionalProperties: {
          type: 'string',
          enum: ['source', 'instrument', 'load', 'part', 'connector', 'side', 'loop'],
        },
        minProperties: 1,
      },
      steps: { minItems: 1, type: 'array', items: {} },
    },
    required: ['steps'],
    additionalProperties: !1,
    $id: 'routine',
  };
function ue(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ue.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.steps === void 0) {
      let s = {
        instancePath: i,
        schemaPath: '#/required',
        keyword: 'required',
        params: { missingProperty: 'steps' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!(s === 'needs' || s === 'steps')) {
        let n = {
          instancePath: i,
          schemaPath: '#/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.needs !== void 0) {
      let s = o.needs;
      if (s && typeof s == 'object' && !Array.isArray(s)) {
        if (Object.keys(s).length < 1) {
          let n = {
            instancePath: i + '/needs',
            schemaPath: '#/properties/needs/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        for (let n in s) {
          let p = t;
          if (typeof n == 'string') {
            if (!v.test(n)) {
              let l = {
                instancePath: i + '/needs',
                schemaPath: '#/properties/needs/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: n,
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/needs',
              schemaPath: '#/properties/needs/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: n,
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
          var r = p === t;
          if (!r) {
            let l = {
              instancePath: i + '/needs',
              schemaPath: '#/properties/needs/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: n },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        for (let n in s) {
          let p = s[n];
          if (typeof p != 'string') {
            let l = {
              instancePath: i + '/needs/' + n.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/needs/additionalProperties/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
          if (!(
            p === 'source' ||
            p === 'instrument' ||
            p === 'load' ||
            p === 'part' ||
            p === 'connector' ||
            p === 'side' ||
            p === 'loop'
          )) {
            let l = {
              instancePath: i + '/needs/' + n.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath: '#/properties/needs/additionalProperties/enum',
              keyword: 'enum',
              params: { allowedValues: tt.properties.needs.additionalProperties.enum },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
      } else {
        let n = {
          instancePath: i + '/needs',
          schemaPath: '#/properties/needs/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.steps !== void 0) {
      let s = o.steps;
      if (Array.isArray(s)) {
        if (s.length < 1) {
          let n = {
            instancePath: i + '/steps',
            schemaPath: '#/properties/steps/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/steps',
          schemaPath: '#/properties/steps/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = { instancePath: i, schemaPath: '#/type', keyword: 'type', params: { type: 'object' } };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((ue.errors = e), t === 0);
}
ue.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var js = fe;
function fe(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = fe.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.rule === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/required',
        keyword: 'required',
        params: { missingProperty: 'rule' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.reason === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/required',
        keyword: 'required',
        params: { missingProperty: 'reason' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!(r === 'rule' || r === 'step' || r === 'routine' || r === 'reason')) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.rule !== void 0) {
      let r = o.rule;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/rule',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/properties/rule/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/rule',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/properties/rule/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.step !== void 0) {
      let r = o.step;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/step',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/properties/step/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/step',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/properties/step/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.routine !== void 0) {
      let r = o.routine;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/routine',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/properties/routine/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/routine',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/properties/routine/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.reason !== void 0) {
      let r = o.reason;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/reason',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/properties/reason/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/reason',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/properties/reason/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/waiver/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((fe.errors = e), t === 0);
}
fe.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var As = ye;
function ye(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ye.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.section === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/section/required',
        keyword: 'required',
        params: { missingProperty: 'section' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (r !== 'section') {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/section/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.section !== void 0) {
      let r = o.section;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/section',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/section/properties/section/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/section',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/section/properties/section/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/section/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ye.errors = e), t === 0);
}
ye.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var zs = ge;
var Ge = {
  type: 'object',
  properties: {
    ignition: { type: 'string', enum: ['on', 'off', 'cycle'] },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['ignition'],
  additionalProperties: !1,
};
function ge(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ge.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.ignition === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/required',
        keyword: 'required',
        params: { missingProperty: 'ignition' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(Ge.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.ignition !== void 0) {
      let r = o.ignition;
      if (typeof r != 'string') {
        let s = {
          instancePath: i + '/ignition',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/ignition/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
      if (!(r === 'on' || r === 'off' || r === 'cycle')) {
        let s = {
          instancePath: i + '/ignition',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/ignition/enum',
          keyword: 'enum',
          params: { allowedValues: Ge.properties.ignition.enum },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-ignition/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ge.errors = e), t === 0);
}
ge.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Zs = we;
var rt = {
  type: 'object',
  properties: {
    disconnect: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['disconnect'],
  additionalProperties: !1,
};
function we(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = we.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.disconnect === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/required',
        keyword: 'required',
        params: { missingProperty: 'disconnect' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(rt.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.disconnect !== void 0) {
      let r = o.disconnect;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/disconnect',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/disconnect/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/disconnect',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/disconnect/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-disconnect/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((we.errors = e), t === 0);
}
we.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var xs = ve;
var it = {
  type: 'object',
  properties: {
    reconnect: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['reconnect'],
  additionalProperties: !1,
};
function ve(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ve.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.reconnect === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/required',
        keyword: 'required',
        params: { missingProperty: 'reconnect' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(it.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.reconnect !== void 0) {
      let r = o.reconnect;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/reconnect',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/reconnect/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/reconnect',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/reconnect/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-reconnect/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ve.errors = e), t === 0);
}
ve.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var qs = ke;
var ot = {
  type: 'object',
  properties: {
    wait: { type: 'string' },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['wait'],
  additionalProperties: !1,
};
function ke(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ke.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.wait === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/required',
        keyword: 'required',
        params: { missingProperty: 'wait' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(ot.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.wait !== void 0 && typeof o.wait != 'string') {
      let r = {
        instancePath: i + '/wait',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/wait/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-wait/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ke.errors = e), t === 0);
}
ke.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ss = $e;
var nt = {
    type: 'object',
    properties: {
      'prove-dead': {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      at: {
        anyOf: [
          {
            type: 'string',
            pattern:
              '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
          },
          {
            minItems: 2,
            maxItems: 2,
            type: 'array',
            items: {
              type: 'string',
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+$',
            },
          },
        ],
      },
      with: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      known: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      outcomes: {
        type: 'object',
        properties: {
          dead: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          live: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
        },
        additionalProperties: !1,
        minProperties: 1,
      },
      id: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      note: { type: 'string', pattern: '\\S' },
      why: { type: 'string', pattern: '\\S' },
      caution: { type: 'string', pattern: '\\S' },
      warning: { type: 'string', pattern: '\\S' },
      danger: { type: 'string', pattern: '\\S' },
      minutes: { type: 'number', exclusiveMinimum: 0 },
      see: { type: 'string', pattern: '\\S' },
    },
    required: ['prove-dead', 'at', 'with', 'known'],
    additionalProperties: !1,
  },
  E = new RegExp(
    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
    'u',
  ),
  at = new RegExp(
    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+$',
    'u',
  ),
  q = new RegExp(
    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
    'u',
  );
function $e(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = $e.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o['prove-dead'] === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/required',
        keyword: 'required',
        params: { missingProperty: 'prove-dead' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.at === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/required',
        keyword: 'required',
        params: { missingProperty: 'at' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.with === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/required',
        keyword: 'required',
        params: { missingProperty: 'with' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.known === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/required',
        keyword: 'required',
        params: { missingProperty: 'known' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!_.call(nt.properties, s)) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o['prove-dead'] !== void 0) {
      let s = o['prove-dead'];
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/prove-dead',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/prove-dead/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/prove-dead',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/prove-dead/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.at !== void 0) {
      let s = o.at,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!E.test(s)) {
          let m = {
            instancePath: i + '/at',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/at/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
            },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/at/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (Array.isArray(s)) {
        if (s.length > 2) {
          let w = {
            instancePath: i + '/at',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/at/anyOf/1/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [w]) : e.push(w), t++);
        }
        if (s.length < 2) {
          let w = {
            instancePath: i + '/at',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/at/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [w]) : e.push(w), t++);
        }
        let m = s.length;
        for (let w = 0; w < m; w++) {
          let A = s[w];
          if (typeof A == 'string') {
            if (!at.test(A)) {
              let y = {
                instancePath: i + '/at/' + w,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/at/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+$',
                },
              };
              (e === null ? (e = [y]) : e.push(y), t++);
            }
          } else {
            let y = {
              instancePath: i + '/at/' + w,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/at/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [y]) : e.push(y), t++);
          }
        }
      } else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/at/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/at/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o.with !== void 0) {
      let s = o.with;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/with',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/with/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/with',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/with/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.known !== void 0) {
      let s = o.known;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/known',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/known/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/known',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/known/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.outcomes !== void 0) {
      let s = o.outcomes;
      if (s && typeof s == 'object' && !Array.isArray(s)) {
        if (Object.keys(s).length < 1) {
          let n = {
            instancePath: i + '/outcomes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/outcomes/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        for (let n in s)
          if (!(n === 'dead' || n === 'live')) {
            let p = {
              instancePath: i + '/outcomes',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/outcomes/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: n },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        if (s.dead !== void 0) {
          let n = s.dead;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/dead',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/outcomes/properties/dead/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/dead',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/outcomes/properties/dead/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.live !== void 0) {
          let n = s.live;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/live',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/outcomes/properties/live/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/live',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/outcomes/properties/live/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
      } else {
        let n = {
          instancePath: i + '/outcomes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/outcomes/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.id !== void 0) {
      let s = o.id;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.note !== void 0) {
      let s = o.note;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.why !== void 0) {
      let s = o.why;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.caution !== void 0) {
      let s = o.caution;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.warning !== void 0) {
      let s = o.warning;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.danger !== void 0) {
      let s = o.danger;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.minutes !== void 0) {
      let s = o.minutes;
      if (typeof s == 'number' && isFinite(s)) {
        if (s <= 0 || isNaN(s)) {
          let n = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.see !== void 0) {
      let s = o.see;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-prove-dead/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return (($e.errors = e), t === 0);
}
$e.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var _s = Pe;
var pt = {
  type: 'object',
  properties: {
    unlock: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['unlock'],
  additionalProperties: !1,
};
function Pe(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Pe.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.unlock === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/required',
        keyword: 'required',
        params: { missingProperty: 'unlock' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(pt.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.unlock !== void 0) {
      let r = o.unlock;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/unlock',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/unlock/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/unlock',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/unlock/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unlock/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((Pe.errors = e), t === 0);
}
Pe.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Is = be;
var dt = {
  type: 'object',
  properties: {
    unplug: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['unplug'],
  additionalProperties: !1,
};
function be(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = be.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.unplug === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/required',
        keyword: 'required',
        params: { missingProperty: 'unplug' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(dt.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.unplug !== void 0) {
      let r = o.unplug;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/unplug',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/unplug/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/unplug',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/unplug/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-unplug/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((be.errors = e), t === 0);
}
be.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ns = je;
var ht = {
  type: 'object',
  properties: {
    plug: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['plug'],
  additionalProperties: !1,
};
function je(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = je.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.plug === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/required',
        keyword: 'required',
        params: { missingProperty: 'plug' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(ht.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.plug !== void 0) {
      let r = o.plug;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/plug',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/plug/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/plug',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/plug/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-plug/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((je.errors = e), t === 0);
}
je.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Os = Ae;
var lt = {
  type: 'object',
  properties: {
    fit: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    at: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
    },
    loop: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['fit', 'at'],
  additionalProperties: !1,
};
function Ae(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Ae.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.fit === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/required',
        keyword: 'required',
        params: { missingProperty: 'fit' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.at === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/required',
        keyword: 'required',
        params: { missingProperty: 'at' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(lt.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.fit !== void 0) {
      let r = o.fit;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/fit',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/fit/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/fit',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/fit/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.at !== void 0) {
      let r = o.at;
      if (typeof r == 'string') {
        if (!E.test(r)) {
          let s = {
            instancePath: i + '/at',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/at/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/at/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.loop !== void 0) {
      let r = o.loop;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/loop',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/loop/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/loop',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/loop/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-fit/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((Ae.errors = e), t === 0);
}
Ae.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ds = ze;
var ct = {
  type: 'object',
  properties: {
    remove: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['remove'],
  additionalProperties: !1,
};
function ze(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = ze.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.remove === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/required',
        keyword: 'required',
        params: { missingProperty: 'remove' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(ct.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.remove !== void 0) {
      let r = o.remove;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/remove',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/remove/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/remove',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/remove/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-remove/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((ze.errors = e), t === 0);
}
ze.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Es = Ze;
var mt = {
  type: 'object',
  properties: {
    move: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    to: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
    },
    loop: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['move', 'to'],
  additionalProperties: !1,
};
function Ze(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Ze.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.move === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/required',
        keyword: 'required',
        params: { missingProperty: 'move' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    if (o.to === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/required',
        keyword: 'required',
        params: { missingProperty: 'to' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(mt.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.move !== void 0) {
      let r = o.move;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/move',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/move/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/move',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/move/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.to !== void 0) {
      let r = o.to;
      if (typeof r == 'string') {
        if (!E.test(r)) {
          let s = {
            instancePath: i + '/to',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/to/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/to',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/to/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.loop !== void 0) {
      let r = o.loop;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/loop',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/loop/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/loop',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/loop/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-move/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((Ze.errors = e), t === 0);
}
Ze.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ms = xe;
var ut = {
  type: 'object',
  properties: {
    read: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    expect: { type: 'string' },
    windows: {
      type: 'object',
      propertyNames: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      additionalProperties: { type: 'string' },
      minProperties: 1,
    },
    outcomes: {
      type: 'object',
      properties: {
        within: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        below: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        above: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        open: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        leak: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        outside: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        else: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
      },
      additionalProperties: {
        type: 'string',
        pattern:
          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
      },
      minProperties: 1,
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['read'],
  additionalProperties: !1,
};
function xe(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = xe.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.read === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/required',
        keyword: 'required',
        params: { missingProperty: 'read' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!_.call(ut.properties, s)) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.read !== void 0) {
      let s = o.read;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/read',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/read/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/read',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/read/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.expect !== void 0 && typeof o.expect != 'string') {
      let s = {
        instancePath: i + '/expect',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/expect/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    if (o.windows !== void 0) {
      let s = o.windows;
      if (s && typeof s == 'object' && !Array.isArray(s)) {
        if (Object.keys(s).length < 1) {
          let n = {
            instancePath: i + '/windows',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/windows/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        for (let n in s) {
          let p = t;
          if (typeof n == 'string') {
            if (!v.test(n)) {
              let l = {
                instancePath: i + '/windows',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/windows/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: n,
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/windows',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/windows/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: n,
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
          var r = p === t;
          if (!r) {
            let l = {
              instancePath: i + '/windows',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/windows/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: n },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        for (let n in s)
          if (typeof s[n] != 'string') {
            let p = {
              instancePath: i + '/windows/' + n.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/windows/additionalProperties/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
      } else {
        let n = {
          instancePath: i + '/windows',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/windows/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.outcomes !== void 0) {
      let s = o.outcomes;
      if (s && typeof s == 'object' && !Array.isArray(s)) {
        if (Object.keys(s).length < 1) {
          let n = {
            instancePath: i + '/outcomes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        for (let n in s)
          if (!(
            n === 'within' ||
            n === 'below' ||
            n === 'above' ||
            n === 'open' ||
            n === 'leak' ||
            n === 'outside' ||
            n === 'else'
          )) {
            let p = s[n];
            if (typeof p == 'string') {
              if (!q.test(p)) {
                let l = {
                  instancePath: i + '/outcomes/' + n.replace(/~/g, '~0').replace(/\//g, '~1'),
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/additionalProperties/pattern',
                  keyword: 'pattern',
                  params: {
                    pattern:
                      '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                  },
                };
                (e === null ? (e = [l]) : e.push(l), t++);
              }
            } else {
              let l = {
                instancePath: i + '/outcomes/' + n.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/additionalProperties/type',
                keyword: 'type',
                params: { type: 'string' },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          }
        if (s.within !== void 0) {
          let n = s.within;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/within',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/within/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/within',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/within/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.below !== void 0) {
          let n = s.below;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/below',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/below/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/below',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/below/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.above !== void 0) {
          let n = s.above;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/above',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/above/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/above',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/above/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.open !== void 0) {
          let n = s.open;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/open',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/open/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/open',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/open/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.leak !== void 0) {
          let n = s.leak;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/leak',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/leak/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/leak',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/leak/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.outside !== void 0) {
          let n = s.outside;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/outside',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/outside/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/outside',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/outside/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.else !== void 0) {
          let n = s.else;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/else',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/else/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/else',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/properties/else/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
      } else {
        let n = {
          instancePath: i + '/outcomes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/outcomes/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.id !== void 0) {
      let s = o.id;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.note !== void 0) {
      let s = o.note;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.why !== void 0) {
      let s = o.why;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.caution !== void 0) {
      let s = o.caution;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.warning !== void 0) {
      let s = o.warning;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.danger !== void 0) {
      let s = o.danger;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.minutes !== void 0) {
      let s = o.minutes;
      if (typeof s == 'number' && isFinite(s)) {
        if (s <= 0 || isNaN(s)) {
          let n = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.see !== void 0) {
      let s = o.see;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((xe.errors = e), t === 0);
}
xe.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Vs = qe;
var ft = {
  type: 'object',
  properties: {
    read: {
      minItems: 1,
      type: 'array',
      items: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      uniqueItems: !0,
    },
    outcomes: {
      type: 'object',
      properties: {
        within: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        else: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
      },
      additionalProperties: {
        type: 'object',
        properties: {
          within: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          below: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          above: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          open: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          leak: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          outside: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          else: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
        },
        additionalProperties: !1,
        minProperties: 1,
      },
      minProperties: 1,
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['read'],
  additionalProperties: !1,
};
function qe(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = qe.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.read === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/required',
        keyword: 'required',
        params: { missingProperty: 'read' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(ft.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.read !== void 0) {
      let r = o.read;
      if (Array.isArray(r)) {
        if (r.length < 1) {
          let l = {
            instancePath: i + '/read',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/read/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [l]) : e.push(l), t++);
        }
        let s = r.length;
        for (let l = 0; l < s; l++) {
          let f = r[l];
          if (typeof f == 'string') {
            if (!v.test(f)) {
              let m = {
                instancePath: i + '/read/' + l,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/read/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [m]) : e.push(m), t++);
            }
          } else {
            let m = {
              instancePath: i + '/read/' + l,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/read/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [m]) : e.push(m), t++);
          }
        }
        let n = r.length,
          p;
        if (n > 1) {
          let l = {};
          for (; n--;) {
            let f = r[n];
            if (typeof f == 'string') {
              if (typeof l[f] == 'number') {
                p = l[f];
                let m = {
                  instancePath: i + '/read',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/read/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: n, j: p },
                };
                (e === null ? (e = [m]) : e.push(m), t++);
                break;
              }
              l[f] = n;
            }
          }
        }
      } else {
        let s = {
          instancePath: i + '/read',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/read/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.outcomes !== void 0) {
      let r = o.outcomes;
      if (r && typeof r == 'object' && !Array.isArray(r)) {
        if (Object.keys(r).length < 1) {
          let s = {
            instancePath: i + '/outcomes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        for (let s in r)
          if (!(s === 'within' || s === 'else')) {
            let n = r[s];
            if (n && typeof n == 'object' && !Array.isArray(n)) {
              if (Object.keys(n).length < 1) {
                let p = {
                  instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1'),
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/minProperties',
                  keyword: 'minProperties',
                  params: { limit: 1 },
                };
                (e === null ? (e = [p]) : e.push(p), t++);
              }
              for (let p in n)
                if (!(
                  p === 'within' ||
                  p === 'below' ||
                  p === 'above' ||
                  p === 'open' ||
                  p === 'leak' ||
                  p === 'outside' ||
                  p === 'else'
                )) {
                  let l = {
                    instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1'),
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/additionalProperties',
                    keyword: 'additionalProperties',
                    params: { additionalProperty: p },
                  };
                  (e === null ? (e = [l]) : e.push(l), t++);
                }
              if (n.within !== void 0) {
                let p = n.within;
                if (typeof p == 'string') {
                  if (!q.test(p)) {
                    let l = {
                      instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/within',
                      schemaPath:
                        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/within/pattern',
                      keyword: 'pattern',
                      params: {
                        pattern:
                          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                      },
                    };
                    (e === null ? (e = [l]) : e.push(l), t++);
                  }
                } else {
                  let l = {
                    instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/within',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/within/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [l]) : e.push(l), t++);
                }
              }
              if (n.below !== void 0) {
                let p = n.below;
                if (typeof p == 'string') {
                  if (!q.test(p)) {
                    let l = {
                      instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/below',
                      schemaPath:
                        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/below/pattern',
                      keyword: 'pattern',
                      params: {
                        pattern:
                          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                      },
                    };
                    (e === null ? (e = [l]) : e.push(l), t++);
                  }
                } else {
                  let l = {
                    instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/below',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/below/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [l]) : e.push(l), t++);
                }
              }
              if (n.above !== void 0) {
                let p = n.above;
                if (typeof p == 'string') {
                  if (!q.test(p)) {
                    let l = {
                      instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/above',
                      schemaPath:
                        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/above/pattern',
                      keyword: 'pattern',
                      params: {
                        pattern:
                          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                      },
                    };
                    (e === null ? (e = [l]) : e.push(l), t++);
                  }
                } else {
                  let l = {
                    instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/above',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/above/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [l]) : e.push(l), t++);
                }
              }
              if (n.open !== void 0) {
                let p = n.open;
                if (typeof p == 'string') {
                  if (!q.test(p)) {
                    let l = {
                      instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/open',
                      schemaPath:
                        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/open/pattern',
                      keyword: 'pattern',
                      params: {
                        pattern:
                          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                      },
                    };
                    (e === null ? (e = [l]) : e.push(l), t++);
                  }
                } else {
                  let l = {
                    instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/open',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/open/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [l]) : e.push(l), t++);
                }
              }
              if (n.leak !== void 0) {
                let p = n.leak;
                if (typeof p == 'string') {
                  if (!q.test(p)) {
                    let l = {
                      instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/leak',
                      schemaPath:
                        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/leak/pattern',
                      keyword: 'pattern',
                      params: {
                        pattern:
                          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                      },
                    };
                    (e === null ? (e = [l]) : e.push(l), t++);
                  }
                } else {
                  let l = {
                    instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/leak',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/leak/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [l]) : e.push(l), t++);
                }
              }
              if (n.outside !== void 0) {
                let p = n.outside;
                if (typeof p == 'string') {
                  if (!q.test(p)) {
                    let l = {
                      instancePath:
                        i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/outside',
                      schemaPath:
                        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/outside/pattern',
                      keyword: 'pattern',
                      params: {
                        pattern:
                          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                      },
                    };
                    (e === null ? (e = [l]) : e.push(l), t++);
                  }
                } else {
                  let l = {
                    instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/outside',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/outside/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [l]) : e.push(l), t++);
                }
              }
              if (n.else !== void 0) {
                let p = n.else;
                if (typeof p == 'string') {
                  if (!q.test(p)) {
                    let l = {
                      instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/else',
                      schemaPath:
                        'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/else/pattern',
                      keyword: 'pattern',
                      params: {
                        pattern:
                          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                      },
                    };
                    (e === null ? (e = [l]) : e.push(l), t++);
                  }
                } else {
                  let l = {
                    instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1') + '/else',
                    schemaPath:
                      'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/properties/else/type',
                    keyword: 'type',
                    params: { type: 'string' },
                  };
                  (e === null ? (e = [l]) : e.push(l), t++);
                }
              }
            } else {
              let p = {
                instancePath: i + '/outcomes/' + s.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/additionalProperties/type',
                keyword: 'type',
                params: { type: 'object' },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          }
        if (r.within !== void 0) {
          let s = r.within;
          if (typeof s == 'string') {
            if (!q.test(s)) {
              let n = {
                instancePath: i + '/outcomes/within',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/properties/within/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [n]) : e.push(n), t++);
            }
          } else {
            let n = {
              instancePath: i + '/outcomes/within',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/properties/within/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        }
        if (r.else !== void 0) {
          let s = r.else;
          if (typeof s == 'string') {
            if (!q.test(s)) {
              let n = {
                instancePath: i + '/outcomes/else',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/properties/else/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [n]) : e.push(n), t++);
            }
          } else {
            let n = {
              instancePath: i + '/outcomes/else',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/properties/else/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        }
      } else {
        let s = {
          instancePath: i + '/outcomes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/outcomes/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-several/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((qe.errors = e), t === 0);
}
qe.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Fs = Se;
var He = {
  type: 'object',
  properties: {
    measure: { type: 'string', enum: ['resistance', 'voltage'] },
    across: {
      anyOf: [
        {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
        },
        {
          minItems: 2,
          maxItems: 2,
          type: 'array',
          items: {
            type: 'string',
            pattern:
              '^(?:ground|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+)?)$',
          },
        },
      ],
    },
    with: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    expect: { type: 'string' },
    windows: {
      type: 'object',
      propertyNames: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      additionalProperties: { type: 'string' },
      minProperties: 1,
    },
    outcomes: {
      type: 'object',
      properties: {
        within: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        below: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        above: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        open: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        leak: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        outside: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        else: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
      },
      additionalProperties: {
        type: 'string',
        pattern:
          '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
      },
      minProperties: 1,
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['measure', 'across', 'with'],
  additionalProperties: !1,
};
function Se(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Se.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.measure === void 0) {
      let n = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/required',
        keyword: 'required',
        params: { missingProperty: 'measure' },
      };
      (e === null ? (e = [n]) : e.push(n), t++);
    }
    if (o.across === void 0) {
      let n = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/required',
        keyword: 'required',
        params: { missingProperty: 'across' },
      };
      (e === null ? (e = [n]) : e.push(n), t++);
    }
    if (o.with === void 0) {
      let n = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/required',
        keyword: 'required',
        params: { missingProperty: 'with' },
      };
      (e === null ? (e = [n]) : e.push(n), t++);
    }
    for (let n in o)
      if (!_.call(He.properties, n)) {
        let p = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: n },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    if (o.measure !== void 0) {
      let n = o.measure;
      if (typeof n != 'string') {
        let p = {
          instancePath: i + '/measure',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/measure/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
      if (!(n === 'resistance' || n === 'voltage')) {
        let p = {
          instancePath: i + '/measure',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/measure/enum',
          keyword: 'enum',
          params: { allowedValues: He.properties.measure.enum },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.across !== void 0) {
      let n = o.across,
        p = t,
        l = !1,
        f = t;
      if (typeof n == 'string') {
        if (!E.test(n)) {
          let w = {
            instancePath: i + '/across',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/across/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
            },
          };
          (e === null ? (e = [w]) : e.push(w), t++);
        }
      } else {
        let w = {
          instancePath: i + '/across',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/across/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [w]) : e.push(w), t++);
      }
      var r = f === t;
      l = l || r;
      let m = t;
      if (Array.isArray(n)) {
        if (n.length > 2) {
          let A = {
            instancePath: i + '/across',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/across/anyOf/1/maxItems',
            keyword: 'maxItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [A]) : e.push(A), t++);
        }
        if (n.length < 2) {
          let A = {
            instancePath: i + '/across',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/across/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 2 },
          };
          (e === null ? (e = [A]) : e.push(A), t++);
        }
        let w = n.length;
        for (let A = 0; A < w; A++) {
          let y = n[A];
          if (typeof y == 'string') {
            if (!Be.test(y)) {
              let d = {
                instancePath: i + '/across/' + A,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/across/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:ground|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*\\.[A-Za-z0-9-]+)?)$',
                },
              };
              (e === null ? (e = [d]) : e.push(d), t++);
            }
          } else {
            let d = {
              instancePath: i + '/across/' + A,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/across/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [d]) : e.push(d), t++);
          }
        }
      } else {
        let w = {
          instancePath: i + '/across',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/across/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [w]) : e.push(w), t++);
      }
      var r = m === t;
      if (((l = l || r), l)) ((t = p), e !== null && (p ? (e.length = p) : (e = null)));
      else {
        let w = {
          instancePath: i + '/across',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/across/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [w]) : e.push(w), t++);
      }
    }
    if (o.with !== void 0) {
      let n = o.with;
      if (typeof n == 'string') {
        if (!v.test(n)) {
          let p = {
            instancePath: i + '/with',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/with/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/with',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/with/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.expect !== void 0 && typeof o.expect != 'string') {
      let n = {
        instancePath: i + '/expect',
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/expect/type',
        keyword: 'type',
        params: { type: 'string' },
      };
      (e === null ? (e = [n]) : e.push(n), t++);
    }
    if (o.windows !== void 0) {
      let n = o.windows;
      if (n && typeof n == 'object' && !Array.isArray(n)) {
        if (Object.keys(n).length < 1) {
          let p = {
            instancePath: i + '/windows',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/windows/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        for (let p in n) {
          let l = t;
          if (typeof p == 'string') {
            if (!v.test(p)) {
              let f = {
                instancePath: i + '/windows',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/windows/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: p,
              };
              (e === null ? (e = [f]) : e.push(f), t++);
            }
          } else {
            let f = {
              instancePath: i + '/windows',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/windows/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: p,
            };
            (e === null ? (e = [f]) : e.push(f), t++);
          }
          var s = l === t;
          if (!s) {
            let f = {
              instancePath: i + '/windows',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/windows/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: p },
            };
            (e === null ? (e = [f]) : e.push(f), t++);
          }
        }
        for (let p in n)
          if (typeof n[p] != 'string') {
            let l = {
              instancePath: i + '/windows/' + p.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/windows/additionalProperties/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
      } else {
        let p = {
          instancePath: i + '/windows',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/windows/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.outcomes !== void 0) {
      let n = o.outcomes;
      if (n && typeof n == 'object' && !Array.isArray(n)) {
        if (Object.keys(n).length < 1) {
          let p = {
            instancePath: i + '/outcomes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
        for (let p in n)
          if (!(
            p === 'within' ||
            p === 'below' ||
            p === 'above' ||
            p === 'open' ||
            p === 'leak' ||
            p === 'outside' ||
            p === 'else'
          )) {
            let l = n[p];
            if (typeof l == 'string') {
              if (!q.test(l)) {
                let f = {
                  instancePath: i + '/outcomes/' + p.replace(/~/g, '~0').replace(/\//g, '~1'),
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/additionalProperties/pattern',
                  keyword: 'pattern',
                  params: {
                    pattern:
                      '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                  },
                };
                (e === null ? (e = [f]) : e.push(f), t++);
              }
            } else {
              let f = {
                instancePath: i + '/outcomes/' + p.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/additionalProperties/type',
                keyword: 'type',
                params: { type: 'string' },
              };
              (e === null ? (e = [f]) : e.push(f), t++);
            }
          }
        if (n.within !== void 0) {
          let p = n.within;
          if (typeof p == 'string') {
            if (!q.test(p)) {
              let l = {
                instancePath: i + '/outcomes/within',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/within/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/outcomes/within',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/within/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        if (n.below !== void 0) {
          let p = n.below;
          if (typeof p == 'string') {
            if (!q.test(p)) {
              let l = {
                instancePath: i + '/outcomes/below',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/below/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/outcomes/below',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/below/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        if (n.above !== void 0) {
          let p = n.above;
          if (typeof p == 'string') {
            if (!q.test(p)) {
              let l = {
                instancePath: i + '/outcomes/above',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/above/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/outcomes/above',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/above/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        if (n.open !== void 0) {
          let p = n.open;
          if (typeof p == 'string') {
            if (!q.test(p)) {
              let l = {
                instancePath: i + '/outcomes/open',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/open/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/outcomes/open',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/open/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        if (n.leak !== void 0) {
          let p = n.leak;
          if (typeof p == 'string') {
            if (!q.test(p)) {
              let l = {
                instancePath: i + '/outcomes/leak',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/leak/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/outcomes/leak',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/leak/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        if (n.outside !== void 0) {
          let p = n.outside;
          if (typeof p == 'string') {
            if (!q.test(p)) {
              let l = {
                instancePath: i + '/outcomes/outside',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/outside/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/outcomes/outside',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/outside/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        if (n.else !== void 0) {
          let p = n.else;
          if (typeof p == 'string') {
            if (!q.test(p)) {
              let l = {
                instancePath: i + '/outcomes/else',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/else/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/outcomes/else',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/properties/else/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
      } else {
        let p = {
          instancePath: i + '/outcomes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/outcomes/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.id !== void 0) {
      let n = o.id;
      if (typeof n == 'string') {
        if (!v.test(n)) {
          let p = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.note !== void 0) {
      let n = o.note;
      if (typeof n == 'string') {
        if (!u.test(n)) {
          let p = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.why !== void 0) {
      let n = o.why;
      if (typeof n == 'string') {
        if (!u.test(n)) {
          let p = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.caution !== void 0) {
      let n = o.caution;
      if (typeof n == 'string') {
        if (!u.test(n)) {
          let p = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.warning !== void 0) {
      let n = o.warning;
      if (typeof n == 'string') {
        if (!u.test(n)) {
          let p = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.danger !== void 0) {
      let n = o.danger;
      if (typeof n == 'string') {
        if (!u.test(n)) {
          let p = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.minutes !== void 0) {
      let n = o.minutes;
      if (typeof n == 'number' && isFinite(n)) {
        if (n <= 0 || isNaN(n)) {
          let p = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
    if (o.see !== void 0) {
      let n = o.see;
      if (typeof n == 'string') {
        if (!u.test(n)) {
          let p = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [p]) : e.push(p), t++);
        }
      } else {
        let p = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [p]) : e.push(p), t++);
      }
    }
  } else {
    let n = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-measure/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [n]) : e.push(n), t++);
  }
  return ((Se.errors = e), t === 0);
}
Se.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Rs = _e;
var yt = {
  type: 'object',
  properties: {
    'read-codes': {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    outcomes: {
      type: 'object',
      properties: {
        none: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        stored: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        present: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
        else: {
          type: 'string',
          pattern:
            '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
        },
      },
      additionalProperties: !1,
      minProperties: 1,
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['read-codes'],
  additionalProperties: !1,
};
function _e(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = _e.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o['read-codes'] === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/required',
        keyword: 'required',
        params: { missingProperty: 'read-codes' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(yt.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o['read-codes'] !== void 0) {
      let r = o['read-codes'];
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/read-codes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/read-codes/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/read-codes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/read-codes/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.outcomes !== void 0) {
      let r = o.outcomes;
      if (r && typeof r == 'object' && !Array.isArray(r)) {
        if (Object.keys(r).length < 1) {
          let s = {
            instancePath: i + '/outcomes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
        for (let s in r)
          if (!(s === 'none' || s === 'stored' || s === 'present' || s === 'else')) {
            let n = {
              instancePath: i + '/outcomes',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: s },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        if (r.none !== void 0) {
          let s = r.none;
          if (typeof s == 'string') {
            if (!q.test(s)) {
              let n = {
                instancePath: i + '/outcomes/none',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/properties/none/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [n]) : e.push(n), t++);
            }
          } else {
            let n = {
              instancePath: i + '/outcomes/none',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/properties/none/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        }
        if (r.stored !== void 0) {
          let s = r.stored;
          if (typeof s == 'string') {
            if (!q.test(s)) {
              let n = {
                instancePath: i + '/outcomes/stored',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/properties/stored/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [n]) : e.push(n), t++);
            }
          } else {
            let n = {
              instancePath: i + '/outcomes/stored',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/properties/stored/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        }
        if (r.present !== void 0) {
          let s = r.present;
          if (typeof s == 'string') {
            if (!q.test(s)) {
              let n = {
                instancePath: i + '/outcomes/present',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/properties/present/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [n]) : e.push(n), t++);
            }
          } else {
            let n = {
              instancePath: i + '/outcomes/present',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/properties/present/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        }
        if (r.else !== void 0) {
          let s = r.else;
          if (typeof s == 'string') {
            if (!q.test(s)) {
              let n = {
                instancePath: i + '/outcomes/else',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/properties/else/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [n]) : e.push(n), t++);
            }
          } else {
            let n = {
              instancePath: i + '/outcomes/else',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/properties/else/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [n]) : e.push(n), t++);
          }
        }
      } else {
        let s = {
          instancePath: i + '/outcomes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/outcomes/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-read-codes/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((_e.errors = e), t === 0);
}
_e.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Bs = Ie;
var gt = {
  type: 'object',
  properties: {
    'clear-codes': {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['clear-codes'],
  additionalProperties: !1,
};
function Ie(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Ie.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o['clear-codes'] === void 0) {
      let r = {
        instancePath: i,
        schemaPath:
          'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/required',
        keyword: 'required',
        params: { missingProperty: 'clear-codes' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(gt.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o['clear-codes'] !== void 0) {
      let r = o['clear-codes'];
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/clear-codes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/clear-codes/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/clear-codes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/clear-codes/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-clear-codes/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((Ie.errors = e), t === 0);
}
Ie.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Cs = Oe;
var wt = {
    type: 'object',
    properties: {
      inspect: { type: 'string', pattern: '\\S' },
      at: {
        anyOf: [
          {
            type: 'string',
            pattern:
              '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
          },
          {
            minItems: 1,
            type: 'array',
            items: {
              type: 'string',
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
            },
            uniqueItems: !0,
          },
        ],
      },
      outcomes: {
        type: 'object',
        properties: {
          ok: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          defect: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          else: {
            type: 'string',
            pattern:
              '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
        },
        additionalProperties: !1,
        minProperties: 1,
      },
      id: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      note: { type: 'string', pattern: '\\S' },
      why: { type: 'string', pattern: '\\S' },
      caution: { type: 'string', pattern: '\\S' },
      warning: { type: 'string', pattern: '\\S' },
      danger: { type: 'string', pattern: '\\S' },
      minutes: { type: 'number', exclusiveMinimum: 0 },
      see: { type: 'string', pattern: '\\S' },
    },
    required: ['inspect'],
    additionalProperties: !1,
  },
  Ne = new RegExp(
    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
    'u',
  );
function Oe(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Oe.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.inspect === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/required',
        keyword: 'required',
        params: { missingProperty: 'inspect' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!_.call(wt.properties, s)) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.inspect !== void 0) {
      let s = o.inspect;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/inspect',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/inspect/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/inspect',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/inspect/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.at !== void 0) {
      let s = o.at,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!Ne.test(s)) {
          let m = {
            instancePath: i + '/at',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/at/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
            },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/at/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (Array.isArray(s)) {
        if (s.length < 1) {
          let y = {
            instancePath: i + '/at',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/at/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [y]) : e.push(y), t++);
        }
        let m = s.length;
        for (let y = 0; y < m; y++) {
          let d = s[y];
          if (typeof d == 'string') {
            if (!Ne.test(d)) {
              let a = {
                instancePath: i + '/at/' + y,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/at/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
                },
              };
              (e === null ? (e = [a]) : e.push(a), t++);
            }
          } else {
            let a = {
              instancePath: i + '/at/' + y,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/at/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [a]) : e.push(a), t++);
          }
        }
        let w = s.length,
          A;
        if (w > 1) {
          let y = {};
          for (; w--;) {
            let d = s[w];
            if (typeof d == 'string') {
              if (typeof y[d] == 'number') {
                A = y[d];
                let a = {
                  instancePath: i + '/at',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/at/anyOf/1/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: w, j: A },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
                break;
              }
              y[d] = w;
            }
          }
        }
      } else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/at/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/at/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o.outcomes !== void 0) {
      let s = o.outcomes;
      if (s && typeof s == 'object' && !Array.isArray(s)) {
        if (Object.keys(s).length < 1) {
          let n = {
            instancePath: i + '/outcomes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        for (let n in s)
          if (!(n === 'ok' || n === 'defect' || n === 'else')) {
            let p = {
              instancePath: i + '/outcomes',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/additionalProperties',
              keyword: 'additionalProperties',
              params: { additionalProperty: n },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        if (s.ok !== void 0) {
          let n = s.ok;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/ok',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/properties/ok/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/ok',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/properties/ok/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.defect !== void 0) {
          let n = s.defect;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/defect',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/properties/defect/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/defect',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/properties/defect/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
        if (s.else !== void 0) {
          let n = s.else;
          if (typeof n == 'string') {
            if (!q.test(n)) {
              let p = {
                instancePath: i + '/outcomes/else',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/properties/else/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:next|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [p]) : e.push(p), t++);
            }
          } else {
            let p = {
              instancePath: i + '/outcomes/else',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/properties/else/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [p]) : e.push(p), t++);
          }
        }
      } else {
        let n = {
          instancePath: i + '/outcomes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/outcomes/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.id !== void 0) {
      let s = o.id;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.note !== void 0) {
      let s = o.note;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.why !== void 0) {
      let s = o.why;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.caution !== void 0) {
      let s = o.caution;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.warning !== void 0) {
      let s = o.warning;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.danger !== void 0) {
      let s = o.danger;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.minutes !== void 0) {
      let s = o.minutes;
      if (typeof s == 'number' && isFinite(s)) {
        if (s <= 0 || isNaN(s)) {
          let n = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.see !== void 0) {
      let s = o.see;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-inspect/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((Oe.errors = e), t === 0);
}
Oe.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Gs = De;
var vt = {
  type: 'object',
  properties: {
    do: { type: 'string', pattern: '\\S' },
    at: {
      anyOf: [
        {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
        },
        {
          minItems: 1,
          type: 'array',
          items: {
            type: 'string',
            pattern:
              '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
          },
          uniqueItems: !0,
        },
      ],
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['do'],
  additionalProperties: !1,
};
function De(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = De.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.do === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/required',
        keyword: 'required',
        params: { missingProperty: 'do' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!_.call(vt.properties, s)) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.do !== void 0) {
      let s = o.do;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/do',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/do/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/do',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/do/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.at !== void 0) {
      let s = o.at,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!Ne.test(s)) {
          let m = {
            instancePath: i + '/at',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/at/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
            },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/at/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (Array.isArray(s)) {
        if (s.length < 1) {
          let y = {
            instancePath: i + '/at',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/at/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [y]) : e.push(y), t++);
        }
        let m = s.length;
        for (let y = 0; y < m; y++) {
          let d = s[y];
          if (typeof d == 'string') {
            if (!Ne.test(d)) {
              let a = {
                instancePath: i + '/at/' + y,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/at/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*(?:\\.[A-Za-z0-9-]+)?)?$',
                },
              };
              (e === null ? (e = [a]) : e.push(a), t++);
            }
          } else {
            let a = {
              instancePath: i + '/at/' + y,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/at/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [a]) : e.push(a), t++);
          }
        }
        let w = s.length,
          A;
        if (w > 1) {
          let y = {};
          for (; w--;) {
            let d = s[w];
            if (typeof d == 'string') {
              if (typeof y[d] == 'number') {
                A = y[d];
                let a = {
                  instancePath: i + '/at',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/at/anyOf/1/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: w, j: A },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
                break;
              }
              y[d] = w;
            }
          }
        }
      } else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/at/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/at',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/at/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o.id !== void 0) {
      let s = o.id;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.note !== void 0) {
      let s = o.note;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.why !== void 0) {
      let s = o.why;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.caution !== void 0) {
      let s = o.caution;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.warning !== void 0) {
      let s = o.warning;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.danger !== void 0) {
      let s = o.danger;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.minutes !== void 0) {
      let s = o.minutes;
      if (typeof s == 'number' && isFinite(s)) {
        if (s <= 0 || isNaN(s)) {
          let n = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.see !== void 0) {
      let s = o.see;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-do/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((De.errors = e), t === 0);
}
De.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Hs = Ee;
var kt = {
  type: 'object',
  properties: {
    replace: {
      anyOf: [
        {
          type: 'string',
          pattern:
            '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
        },
        {
          minItems: 1,
          type: 'array',
          items: {
            type: 'string',
            pattern:
              '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
          },
          uniqueItems: !0,
        },
      ],
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['replace'],
  additionalProperties: !1,
};
function Ee(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Ee.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.replace === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/required',
        keyword: 'required',
        params: { missingProperty: 'replace' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!_.call(kt.properties, s)) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.replace !== void 0) {
      let s = o.replace,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let m = {
            instancePath: i + '/replace',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/replace/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/replace',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/replace/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (Array.isArray(s)) {
        if (s.length < 1) {
          let y = {
            instancePath: i + '/replace',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/replace/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [y]) : e.push(y), t++);
        }
        let m = s.length;
        for (let y = 0; y < m; y++) {
          let d = s[y];
          if (typeof d == 'string') {
            if (!v.test(d)) {
              let a = {
                instancePath: i + '/replace/' + y,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/replace/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [a]) : e.push(a), t++);
            }
          } else {
            let a = {
              instancePath: i + '/replace/' + y,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/replace/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [a]) : e.push(a), t++);
          }
        }
        let w = s.length,
          A;
        if (w > 1) {
          let y = {};
          for (; w--;) {
            let d = s[w];
            if (typeof d == 'string') {
              if (typeof y[d] == 'number') {
                A = y[d];
                let a = {
                  instancePath: i + '/replace',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/replace/anyOf/1/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: w, j: A },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
                break;
              }
              y[d] = w;
            }
          }
        }
      } else {
        let m = {
          instancePath: i + '/replace',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/replace/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/replace',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/replace/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o.id !== void 0) {
      let s = o.id;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.note !== void 0) {
      let s = o.note;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.why !== void 0) {
      let s = o.why;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.caution !== void 0) {
      let s = o.caution;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.warning !== void 0) {
      let s = o.warning;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.danger !== void 0) {
      let s = o.danger;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.minutes !== void 0) {
      let s = o.minutes;
      if (typeof s == 'number' && isFinite(s)) {
        if (s <= 0 || isNaN(s)) {
          let n = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.see !== void 0) {
      let s = o.see;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-replace/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((Ee.errors = e), t === 0);
}
Ee.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Js = Me;
var $t = {
    type: 'object',
    properties: {
      conclude: {
        anyOf: [
          {
            type: 'string',
            pattern:
              '^(?:none|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          {
            minItems: 1,
            type: 'array',
            items: {
              type: 'string',
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
            uniqueItems: !0,
          },
        ],
      },
      id: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      note: { type: 'string', pattern: '\\S' },
      why: { type: 'string', pattern: '\\S' },
      caution: { type: 'string', pattern: '\\S' },
      warning: { type: 'string', pattern: '\\S' },
      danger: { type: 'string', pattern: '\\S' },
      minutes: { type: 'number', exclusiveMinimum: 0 },
      see: { type: 'string', pattern: '\\S' },
    },
    required: ['conclude'],
    additionalProperties: !1,
  },
  Pt = new RegExp(
    '^(?:none|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
    'u',
  );
function Me(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Me.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.conclude === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/required',
        keyword: 'required',
        params: { missingProperty: 'conclude' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!_.call($t.properties, s)) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.conclude !== void 0) {
      let s = o.conclude,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!Pt.test(s)) {
          let m = {
            instancePath: i + '/conclude',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/conclude/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?:none|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
            },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/conclude',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/conclude/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (Array.isArray(s)) {
        if (s.length < 1) {
          let y = {
            instancePath: i + '/conclude',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/conclude/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [y]) : e.push(y), t++);
        }
        let m = s.length;
        for (let y = 0; y < m; y++) {
          let d = s[y];
          if (typeof d == 'string') {
            if (!v.test(d)) {
              let a = {
                instancePath: i + '/conclude/' + y,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/conclude/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
              };
              (e === null ? (e = [a]) : e.push(a), t++);
            }
          } else {
            let a = {
              instancePath: i + '/conclude/' + y,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/conclude/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [a]) : e.push(a), t++);
          }
        }
        let w = s.length,
          A;
        if (w > 1) {
          let y = {};
          for (; w--;) {
            let d = s[w];
            if (typeof d == 'string') {
              if (typeof y[d] == 'number') {
                A = y[d];
                let a = {
                  instancePath: i + '/conclude',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/conclude/anyOf/1/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: w, j: A },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
                break;
              }
              y[d] = w;
            }
          }
        }
      } else {
        let m = {
          instancePath: i + '/conclude',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/conclude/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/conclude',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/conclude/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o.id !== void 0) {
      let s = o.id;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.note !== void 0) {
      let s = o.note;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.why !== void 0) {
      let s = o.why;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.caution !== void 0) {
      let s = o.caution;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.warning !== void 0) {
      let s = o.warning;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.danger !== void 0) {
      let s = o.danger;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.minutes !== void 0) {
      let s = o.minutes;
      if (typeof s == 'number' && isFinite(s)) {
        if (s <= 0 || isNaN(s)) {
          let n = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.see !== void 0) {
      let s = o.see;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-conclude/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((Me.errors = e), t === 0);
}
Me.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ks = Ve;
var bt = {
  type: 'object',
  properties: {
    go: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['go'],
  additionalProperties: !1,
};
function Ve(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Ve.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.go === void 0) {
      let r = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/required',
        keyword: 'required',
        params: { missingProperty: 'go' },
      };
      (e === null ? (e = [r]) : e.push(r), t++);
    }
    for (let r in o)
      if (!_.call(bt.properties, r)) {
        let s = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: r },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    if (o.go !== void 0) {
      let r = o.go;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/go',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/go/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/go',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/go/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.id !== void 0) {
      let r = o.id;
      if (typeof r == 'string') {
        if (!v.test(r)) {
          let s = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.note !== void 0) {
      let r = o.note;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.why !== void 0) {
      let r = o.why;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.caution !== void 0) {
      let r = o.caution;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.warning !== void 0) {
      let r = o.warning;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.danger !== void 0) {
      let r = o.danger;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.minutes !== void 0) {
      let r = o.minutes;
      if (typeof r == 'number' && isFinite(r)) {
        if (r <= 0 || isNaN(r)) {
          let s = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
    if (o.see !== void 0) {
      let r = o.see;
      if (typeof r == 'string') {
        if (!u.test(r)) {
          let s = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [s]) : e.push(s), t++);
        }
      } else {
        let s = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [s]) : e.push(s), t++);
      }
    }
  } else {
    let r = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-go/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [r]) : e.push(r), t++);
  }
  return ((Ve.errors = e), t === 0);
}
Ve.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Ls = Fe;
var jt = {
    type: 'object',
    properties: {
      stop: { type: 'string', pattern: '\\S' },
      leaves: {
        anyOf: [
          {
            type: 'string',
            pattern:
              '^(?:codes|repair|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
          },
          {
            minItems: 1,
            type: 'array',
            items: {
              type: 'string',
              pattern:
                '^(?:codes|repair|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
            },
            uniqueItems: !0,
          },
        ],
      },
      id: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      note: { type: 'string', pattern: '\\S' },
      why: { type: 'string', pattern: '\\S' },
      caution: { type: 'string', pattern: '\\S' },
      warning: { type: 'string', pattern: '\\S' },
      danger: { type: 'string', pattern: '\\S' },
      minutes: { type: 'number', exclusiveMinimum: 0 },
      see: { type: 'string', pattern: '\\S' },
    },
    required: ['stop'],
    additionalProperties: !1,
  },
  Je = new RegExp(
    '^(?:codes|repair|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
    'u',
  );
function Fe(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Fe.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.stop === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/required',
        keyword: 'required',
        params: { missingProperty: 'stop' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!_.call(jt.properties, s)) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.stop !== void 0) {
      let s = o.stop;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/stop',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/stop/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/stop',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/stop/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.leaves !== void 0) {
      let s = o.leaves,
        n = t,
        p = !1,
        l = t;
      if (typeof s == 'string') {
        if (!Je.test(s)) {
          let m = {
            instancePath: i + '/leaves',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/leaves/anyOf/0/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?:codes|repair|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
            },
          };
          (e === null ? (e = [m]) : e.push(m), t++);
        }
      } else {
        let m = {
          instancePath: i + '/leaves',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/leaves/anyOf/0/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = l === t;
      p = p || r;
      let f = t;
      if (Array.isArray(s)) {
        if (s.length < 1) {
          let y = {
            instancePath: i + '/leaves',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/leaves/anyOf/1/minItems',
            keyword: 'minItems',
            params: { limit: 1 },
          };
          (e === null ? (e = [y]) : e.push(y), t++);
        }
        let m = s.length;
        for (let y = 0; y < m; y++) {
          let d = s[y];
          if (typeof d == 'string') {
            if (!Je.test(d)) {
              let a = {
                instancePath: i + '/leaves/' + y,
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/leaves/anyOf/1/items/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?:codes|repair|(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*)$',
                },
              };
              (e === null ? (e = [a]) : e.push(a), t++);
            }
          } else {
            let a = {
              instancePath: i + '/leaves/' + y,
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/leaves/anyOf/1/items/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [a]) : e.push(a), t++);
          }
        }
        let w = s.length,
          A;
        if (w > 1) {
          let y = {};
          for (; w--;) {
            let d = s[w];
            if (typeof d == 'string') {
              if (typeof y[d] == 'number') {
                A = y[d];
                let a = {
                  instancePath: i + '/leaves',
                  schemaPath:
                    'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/leaves/anyOf/1/uniqueItems',
                  keyword: 'uniqueItems',
                  params: { i: w, j: A },
                };
                (e === null ? (e = [a]) : e.push(a), t++);
                break;
              }
              y[d] = w;
            }
          }
        }
      } else {
        let m = {
          instancePath: i + '/leaves',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/leaves/anyOf/1/type',
          keyword: 'type',
          params: { type: 'array' },
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
      var r = f === t;
      if (((p = p || r), p)) ((t = n), e !== null && (n ? (e.length = n) : (e = null)));
      else {
        let m = {
          instancePath: i + '/leaves',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/leaves/anyOf',
          keyword: 'anyOf',
          params: {},
        };
        (e === null ? (e = [m]) : e.push(m), t++);
      }
    }
    if (o.id !== void 0) {
      let s = o.id;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.note !== void 0) {
      let s = o.note;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.why !== void 0) {
      let s = o.why;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.caution !== void 0) {
      let s = o.caution;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.warning !== void 0) {
      let s = o.warning;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.danger !== void 0) {
      let s = o.danger;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.minutes !== void 0) {
      let s = o.minutes;
      if (typeof s == 'number' && isFinite(s)) {
        if (s <= 0 || isNaN(s)) {
          let n = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.see !== void 0) {
      let s = o.see;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-stop/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((Fe.errors = e), t === 0);
}
Fe.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Qs = Re;
var At = {
  type: 'object',
  properties: {
    run: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    given: {
      type: 'object',
      propertyNames: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
      },
      additionalProperties: {
        type: 'string',
        pattern:
          '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
      },
      minProperties: 1,
    },
    id: {
      type: 'string',
      pattern:
        '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
    },
    note: { type: 'string', pattern: '\\S' },
    why: { type: 'string', pattern: '\\S' },
    caution: { type: 'string', pattern: '\\S' },
    warning: { type: 'string', pattern: '\\S' },
    danger: { type: 'string', pattern: '\\S' },
    minutes: { type: 'number', exclusiveMinimum: 0 },
    see: { type: 'string', pattern: '\\S' },
  },
  required: ['run'],
  additionalProperties: !1,
};
function Re(
  o,
  {
    instancePath: i = '',
    parentData: $,
    parentDataProperty: P,
    rootData: b = o,
    dynamicAnchors: j = {},
  } = {},
) {
  let e = null,
    t = 0,
    h = Re.evaluated;
  if (
    (h.dynamicProps && (h.props = void 0),
    h.dynamicItems && (h.items = void 0),
    o && typeof o == 'object' && !Array.isArray(o))
  ) {
    if (o.run === void 0) {
      let s = {
        instancePath: i,
        schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/required',
        keyword: 'required',
        params: { missingProperty: 'run' },
      };
      (e === null ? (e = [s]) : e.push(s), t++);
    }
    for (let s in o)
      if (!_.call(At.properties, s)) {
        let n = {
          instancePath: i,
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/additionalProperties',
          keyword: 'additionalProperties',
          params: { additionalProperty: s },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    if (o.run !== void 0) {
      let s = o.run;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/run',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/run/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/run',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/run/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.given !== void 0) {
      let s = o.given;
      if (s && typeof s == 'object' && !Array.isArray(s)) {
        if (Object.keys(s).length < 1) {
          let n = {
            instancePath: i + '/given',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/given/minProperties',
            keyword: 'minProperties',
            params: { limit: 1 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
        for (let n in s) {
          let p = t;
          if (typeof n == 'string') {
            if (!v.test(n)) {
              let l = {
                instancePath: i + '/given',
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/given/propertyNames/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
                },
                propertyName: n,
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/given',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/given/propertyNames/type',
              keyword: 'type',
              params: { type: 'string' },
              propertyName: n,
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
          var r = p === t;
          if (!r) {
            let l = {
              instancePath: i + '/given',
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/given/propertyNames',
              keyword: 'propertyNames',
              params: { propertyName: n },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
        for (let n in s) {
          let p = s[n];
          if (typeof p == 'string') {
            if (!E.test(p)) {
              let l = {
                instancePath: i + '/given/' + n.replace(/~/g, '~0').replace(/\//g, '~1'),
                schemaPath:
                  'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/given/additionalProperties/pattern',
                keyword: 'pattern',
                params: {
                  pattern:
                    '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*(?:\\.(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)(?:\\.|$))[A-Za-z][A-Za-z0-9-]*)?$',
                },
              };
              (e === null ? (e = [l]) : e.push(l), t++);
            }
          } else {
            let l = {
              instancePath: i + '/given/' + n.replace(/~/g, '~0').replace(/\//g, '~1'),
              schemaPath:
                'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/given/additionalProperties/type',
              keyword: 'type',
              params: { type: 'string' },
            };
            (e === null ? (e = [l]) : e.push(l), t++);
          }
        }
      } else {
        let n = {
          instancePath: i + '/given',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/given/type',
          keyword: 'type',
          params: { type: 'object' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.id !== void 0) {
      let s = o.id;
      if (typeof s == 'string') {
        if (!v.test(s)) {
          let n = {
            instancePath: i + '/id',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/id/pattern',
            keyword: 'pattern',
            params: {
              pattern:
                '^(?!(?:next|none|else|within|below|above|open|leak|outside|ok|defect|dead|live|stored|present|codes|repair|ground)$)[A-Za-z][A-Za-z0-9-]*$',
            },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/id',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/id/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.note !== void 0) {
      let s = o.note;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/note',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/note/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/note',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/note/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.why !== void 0) {
      let s = o.why;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/why',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/why/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/why',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/why/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.caution !== void 0) {
      let s = o.caution;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/caution',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/caution/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/caution',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/caution/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.warning !== void 0) {
      let s = o.warning;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/warning',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/warning/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/warning',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/warning/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.danger !== void 0) {
      let s = o.danger;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/danger',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/danger/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/danger',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/danger/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.minutes !== void 0) {
      let s = o.minutes;
      if (typeof s == 'number' && isFinite(s)) {
        if (s <= 0 || isNaN(s)) {
          let n = {
            instancePath: i + '/minutes',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/minutes/exclusiveMinimum',
            keyword: 'exclusiveMinimum',
            params: { comparison: '>', limit: 0 },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/minutes',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/minutes/type',
          keyword: 'type',
          params: { type: 'number' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
    if (o.see !== void 0) {
      let s = o.see;
      if (typeof s == 'string') {
        if (!u.test(s)) {
          let n = {
            instancePath: i + '/see',
            schemaPath:
              'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/see/pattern',
            keyword: 'pattern',
            params: { pattern: '\\S' },
          };
          (e === null ? (e = [n]) : e.push(n), t++);
        }
      } else {
        let n = {
          instancePath: i + '/see',
          schemaPath:
            'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/properties/see/type',
          keyword: 'type',
          params: { type: 'string' },
        };
        (e === null ? (e = [n]) : e.push(n), t++);
      }
    }
  } else {
    let s = {
      instancePath: i,
      schemaPath: 'https://ohmwright.invalid/schemas/procedure.schema.json#/$defs/step-run/type',
      keyword: 'type',
      params: { type: 'object' },
    };
    (e === null ? (e = [s]) : e.push(s), t++);
  }
  return ((Re.errors = e), t === 0);
}
Re.evaluated = { props: !0, dynamicProps: !1, dynamicItems: !1 };
var Zt = {
  shell: Ke,
  'parts-shell': Le,
  battery: Qe,
  'high-voltage': Te,
  regulated: Ue,
  monitor: We,
  multimeter: Xe,
  'lamp-load-by-resistance': Ye,
  'lamp-load-by-rating': es,
  'resistor-load': ss,
  'cable-by-size': ts,
  'cable-by-resistance': rs,
  'rotary-coupling': is,
  series: os,
  initiator: ns,
  'hv-section': as,
  resistor: ps,
  heater: ds,
  switch: hs,
  coil: ls,
  'thermistor-by-beta': cs,
  'thermistor-by-coefficients': ms,
  rtd: us,
  'lamp-by-resistance': fs,
  'lamp-by-rating': ys,
  connector: gs,
  loop: ws,
  'network-part': vs,
  'network-connector': ks,
  'network-source': $s,
  entry: Ps,
  routine: bs,
  waiver: js,
  section: As,
  'step-ignition': zs,
  'step-disconnect': Zs,
  'step-reconnect': xs,
  'step-wait': qs,
  'step-prove-dead': Ss,
  'step-unlock': _s,
  'step-unplug': Is,
  'step-plug': Ns,
  'step-fit': Os,
  'step-remove': Ds,
  'step-move': Es,
  'step-read': Ms,
  'step-read-several': Vs,
  'step-measure': Fs,
  'step-read-codes': Rs,
  'step-clear-codes': Bs,
  'step-inspect': Cs,
  'step-do': Gs,
  'step-replace': Hs,
  'step-conclude': Js,
  'step-go': Ks,
  'step-stop': Ls,
  'step-run': Qs,
};
export { Zt as validators };
