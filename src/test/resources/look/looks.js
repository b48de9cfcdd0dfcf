// What a page looks like, told as a list of what is wrong with it. One expression, so that a browser can be given it.
(() => {
  const OURS = ['Young Serif', 'Atkinson Hyperlegible Next'];
  /** As far apart as two edges may be by rounding alone. */
  const PIXEL = 1.5;

  const name = (element) => element.tagName.toLowerCase() + (element.id ? `#${element.id}` : '')
    + [...element.classList].map((c) => `.${c}`).join('');
  const said = (element) => `${name(element)} "${element.textContent.trim().replace(/\s+/g, ' ').slice(0, 40)}"`;

  /** All elements, those in shadow trees too. */
  function* all(root = document) {
    for (const element of root.querySelectorAll('*')) {
      yield element;
      if (element.shadowRoot) yield* all(element.shadowRoot);
    }
  }

  const visible = (element) => element.checkVisibility({ visibilityProperty: true, opacityProperty: true })
    && element.getClientRects().length > 0 && !element.closest('.unseen, [inert]')
    && !(element.getRootNode().host?.closest('[inert]'));

  /** Elements that have words of their own, and are seen. */
  function* worded() {
    for (const element of all()) {
      const words = [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.textContent.trim());
      if (words && !['SCRIPT', 'STYLE', 'NOSCRIPT', 'OPTION', 'TITLE', 'TEMPLATE'].includes(element.tagName)
          && visible(element)) yield element;
    }
  }

  /** The nearest box that cuts off what sticks out of it. */
  function cutter(element) {
    for (let box = element; box && box !== document.documentElement; box = box.parentElement) {
      const { overflowX, overflowY } = getComputedStyle(box);
      if ([overflowX, overflowY].some((o) => o === 'hidden' || o === 'clip')) return box;
      if ([overflowX, overflowY].some((o) => o === 'auto' || o === 'scroll')) return null; // it can be scrolled to
    }
    return null;
  }

  /** The ink of a text, line by line: lines and faces keep room above and below it. @param {Text} text */
  function ink(text) {
    const em = parseFloat(getComputedStyle(text.parentElement).fontSize);
    const range = document.createRange();
    range.selectNodeContents(text);
    return [...range.getClientRects()].filter((rect) => rect.width > 1).map(({ left, right, top, bottom }) => {
      const middle = (top + bottom) / 2;
      return { left, right, top: middle - em * 0.4, bottom: middle + em * 0.4 };
    });
  }

  function* texts(element) {
    const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      if (walker.currentNode.data.trim() && visible(walker.currentNode.parentElement)) yield walker.currentNode;
    }
  }

  const apart = (one, other) => one.right <= other.left + PIXEL || other.right <= one.left + PIXEL
    || one.bottom <= other.top + PIXEL || other.bottom <= one.top + PIXEL;

  /** What of its ink is not cut away by a box. */
  const shown = (element) => [...texts(element)].flatMap((text) => {
    const edge = cutter(text.parentElement)?.getBoundingClientRect();
    return ink(text).filter((line) => !edge || !apart(line, edge));
  });

  /** @param {Element[]} elements @param {string} where */
  function over(elements, where) {
    const inked = elements.map((element) => ({ element, lines: shown(element) }));
    return inked.flatMap((one, i) => inked.slice(i + 1)
      .filter((other) => one.lines.some((line) => other.lines.some((of) => !apart(line, of))))
      .map((other) => `${where}: ${said(one.element)} lies over ${said(other.element)}`));
  }

  return {
    /** Words whose first choice is no face of ours, that ask for a weight or a slant which no face has. */
    letters() {
      const wrong = [];
      for (const element of worded()) {
        const { fontFamily, fontStyle, fontWeight } = getComputedStyle(element);
        const first = fontFamily.split(',')[0].trim().replace(/["']/g, '');
        if (!OURS.includes(first)) wrong.push(`${said(element)} is set in ${first}`);
        if (fontStyle !== 'normal') wrong.push(`${said(element)} is slanted, and no slanted face comes with the program`);
        if (first === OURS[0] && Number(fontWeight) > 700) wrong.push(`${said(element)} is made bolder than its face`);
      }
      return wrong;
    },

    /** Faces of ours that could not be had. */
    missingFaces() {
      return [...document.fonts].filter((face) => face.status === 'error').map((face) => face.family.replace(/["']/g, ''))
        .filter((family) => OURS.includes(family)); // what stands in for them may not be on this machine
    },

    /** A page that has to be scrolled sideways. */
    sideways() {
      const { scrollWidth } = document.documentElement;
      if (scrollWidth <= innerWidth + 1) return [];
      const widest = [...all()].filter((e) => visible(e) && e.getBoundingClientRect().right > innerWidth + 1).slice(0, 3);
      return [`${scrollWidth} px wide in ${innerWidth}: ${widest.map(said).join(', ')}`];
    },

    /** Words that are cut through by the edge of a box. What a box wraps out of sight whole is not cut. */
    cut() {
      const wrong = [];
      for (const element of worded()) {
        const style = getComputedStyle(element);
        if (style.textOverflow === 'ellipsis' || style.webkitLineClamp !== 'none') continue; // shortened, and says so
        const box = cutter(element);
        if (!box || getComputedStyle(box).textOverflow === 'ellipsis') continue;
        const edge = box.getBoundingClientRect();
        const out = [...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE).flatMap(ink)
          .filter((line) => !apart(line, edge)) // wrapped out of sight whole
          .some((line) => line.top < edge.top - PIXEL || line.bottom > edge.bottom + PIXEL
            || line.left < edge.left - PIXEL || line.right > edge.right + PIXEL);
        if (out) wrong.push(`${said(element)} is cut by ${name(box)}`);
      }
      return wrong;
    },

    /** What lies over something else in the bar above a page, and on a tile. */
    overlaid() {
      return [...document.querySelectorAll('.bar, .wall__top')].flatMap((bar) => over([...bar.children], name(bar)))
        .concat([...document.querySelectorAll('.face')].flatMap((face) => over([...face.children], name(face))));
    },

    /**
     * Controls smaller than they may be. Links within a sentence may be as high as its line.
     * @param {number} least of all @param {number} button of buttons
     */
    small(least, button) {
      const wrong = [];
      for (const element of all()) {
        if (!element.matches('a[href], button, summary, select, textarea, input:not([type=hidden])')
            || element.disabled || !visible(element)) continue;
        if (element.tagName === 'A' && getComputedStyle(element).display === 'inline') continue;
        const target = element.matches('input[type=checkbox], input[type=radio]') ? element.closest('label') ?? element
          : element;
        const { width, height } = target.getBoundingClientRect();
        const asked = ['BUTTON', 'SUMMARY'].includes(element.tagName) ? button : least;
        if (width < asked - 0.5 || height < asked - 0.5) {
          wrong.push(`${said(element)} is ${Math.round(width)} x ${Math.round(height)}`);
        }
      }
      return wrong;
    },

    /** Whatever moves for longer than a hundredth of a second. */
    moves() {
      const longest = (list) => Math.max(...list.split(',').map((t) => parseFloat(t) * (t.trim().endsWith('ms') ? 1 : 1e3)));
      return [...all()].filter((element) => {
        const { animationName, animationDuration, transitionDuration } = getComputedStyle(element);
        return longest(transitionDuration) > 10 || (animationName !== 'none' && longest(animationDuration) > 10);
      }).map(name).concat(document.getAnimations().filter((a) => a.effect.getComputedTiming().endTime > 10)
        .map((a) => `an animation of ${a.effect.target && name(a.effect.target)}`));
    },

    /** Spaces as readers may set them: WCAG 2.2, 1.4.12. @param {boolean} on */
    space(on) {
      const sheet = new CSSStyleSheet();
      sheet.replaceSync(on ? `* { line-height: 1.5 !important; letter-spacing: .12em !important; word-spacing: .16em !important; }
        p { margin-bottom: 2em !important; }` : '');
      document.adoptedStyleSheets = [sheet];
    },

    /** Letters at twice their size, boxes as they are: WCAG 2.2, 1.4.4. @param {boolean} on */
    enlarge(on) {
      document.documentElement.style.fontSize = on ? '200%' : '';
    },
  };
})()
