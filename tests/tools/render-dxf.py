"""Renders the model space of a DXF file to a PNG picture, to be looked at.

Usage: python3 tests/tools/render-dxf.py IN.dxf OUT.png [DPI]
Needs Debian's python3-ezdxf and python3-matplotlib.
"""

import sys

import ezdxf
import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
from ezdxf.addons.drawing import Frontend, RenderContext
from ezdxf.addons.drawing.config import Configuration, LinePolicy
from ezdxf.addons.drawing.matplotlib import MatplotlibBackend


class OnPaper(RenderContext):
    """White paper and black lines instead of the screen's dark ground."""

    def set_current_layout(self, layout, ctb=""):
        super().set_current_layout(layout, ctb)
        self.current_layout_properties.set_colors("#ffffff", "#000000")
        self.layers = self._setup_layers(layout.doc)


def render(source: str, target: str, dpi: int) -> None:
    document = ezdxf.readfile(source)
    low, high = document.header["$EXTMIN"], document.header["$EXTMAX"]
    scale = document.header["$DIMSCALE"]
    figure = plt.figure(figsize=((high[0] - low[0]) / scale / 25.4 + 0.4, (high[1] - low[1]) / scale / 25.4 + 0.4))
    axes = figure.add_axes([0, 0, 1, 1])
    context = OnPaper(document)
    # The backend takes the millimetres of a weight for points.
    settings = Configuration.defaults().with_changes(
        line_policy=LinePolicy.ACCURATE, lineweight_scaling=72 / 25.4, min_lineweight=0.5
    )
    Frontend(context, MatplotlibBackend(axes), config=settings).draw_layout(document.modelspace())
    figure.savefig(target, dpi=dpi, facecolor="#ffffff")


if __name__ == "__main__":
    if len(sys.argv) not in (3, 4):
        sys.exit(__doc__)
    render(sys.argv[1], sys.argv[2], int(sys.argv[3]) if len(sys.argv) == 4 else 150)
