package takeup.terminal;

import java.util.Base64;
import takeup.grid.Bitmap;
import takeup.grid.Deflated;
import takeup.grid.Placement;

/**
 * The graphics protocol of the kitty terminal, which others draw too: packed red, green and blue in base 64, in pieces
 * ("Terminal graphics protocol", sections "Transferring pixel data" and "Controlling displayed image layout").
 *
 * @param cellColumns dots in a cell, across; 0 where the terminal did not say
 * @param cellRows dots in a cell, down
 */
record KittyGraphics(int cellColumns, int cellRows) implements PixelProtocol {
    /** The protocol's own limit for one piece. */
    private static final int PIECE = 4096;

    private static final String BEGIN = "\u001b_G";
    private static final String END = "\u001b\\";

    @Override
    public String cleared() {
        return BEGIN + "a=d,q=2" + END;
    }

    /** It keeps its shape inside its cells, and is never sent larger than they are. */
    @Override
    public String drawn(Placement placement) {
        Bitmap bitmap = placement.bitmap();
        String size = ",c=" + placement.columns() + ",r=" + placement.rows();
        if (cellColumns > 0) {
            bitmap = bitmap.fitted(placement.columns() * cellColumns, placement.rows() * cellRows);
            size = "";
        }
        String data = Base64.getEncoder().encodeToString(packed(bitmap));
        StringBuilder drawn = new StringBuilder();
        String keys = "a=T,q=2,C=1,f=24,o=z,s=" + bitmap.columns() + ",v=" + bitmap.rows() + size + ",";
        for (int from = 0; from < data.length(); from += PIECE) {
            int to = Math.min(data.length(), from + PIECE);
            drawn.append(BEGIN).append(keys).append("m=").append(to < data.length() ? 1 : 0);
            drawn.append(';').append(data, from, to).append(END);
            keys = "q=2,";
        }
        return drawn.toString();
    }

    private static byte[] packed(Bitmap bitmap) {
        byte[] dots = new byte[3 * bitmap.columns() * bitmap.rows()];
        int at = 0;
        for (int dot : bitmap.rgb()) {
            dots[at++] = (byte) (dot >> 16);
            dots[at++] = (byte) (dot >> 8);
            dots[at++] = (byte) dot;
        }
        return Deflated.of(dots);
    }

    /** What the terminal is asked: whether it could draw one dot. */
    static String asked() {
        return BEGIN + "i=31,s=1,v=1,a=q,t=d,f=24;" + Base64.getEncoder().encodeToString(new byte[3]) + END;
    }

    /** Whether it says that it could. */
    static boolean isYes(String answer) {
        return answer.startsWith(BEGIN) && answer.contains(";OK");
    }
}
