package studio.stancebook.demo;

import java.util.List;

/** Invented pairs of words: birds and kinds of places, no two alike. */
final class Names {

    private static final List<String> BIRDS = List.of(
            "Avocet",
            "Bittern",
            "Bunting",
            "Chaffinch",
            "Chough",
            "Corncrake",
            "Crossbill",
            "Curlew",
            "Dabchick",
            "Dipper",
            "Dotterel",
            "Dunlin",
            "Dunnock",
            "Eider",
            "Fieldfare",
            "Fulmar",
            "Gadwall",
            "Gannet",
            "Garganey",
            "Godwit",
            "Goldcrest",
            "Goosander",
            "Grebe",
            "Greenshank",
            "Guillemot",
            "Hoopoe",
            "Jackdaw",
            "Kittiwake",
            "Knot",
            "Lapwing",
            "Linnet",
            "Moorhen",
            "Nuthatch",
            "Ouzel",
            "Petrel",
            "Pintail",
            "Pipit",
            "Plover",
            "Pochard",
            "Ptarmigan",
            "Razorbill",
            "Redpoll",
            "Redshank",
            "Redstart",
            "Redwing",
            "Ruff",
            "Sanderling",
            "Scoter",
            "Shelduck",
            "Shoveler",
            "Siskin",
            "Smew",
            "Stilt",
            "Stonechat",
            "Tern",
            "Treecreeper",
            "Turnstone",
            "Twite",
            "Wheatear",
            "Whimbrel",
            "Whinchat",
            "Whitethroat",
            "Wigeon",
            "Woodcock",
            "Wryneck",
            "Yellowhammer");

    private static final List<String> PLACES = List.of(
            "Fen", "Saltings", "Fell", "Dale", "Sound", "Moor", "Strand", "Combe", "Tarn", "Holm", "Carr", "Wold");

    private Names() {}

    /** The name of number {@code i}, from 0; different for each below 200. */
    static String of(int i) {
        int round = i / BIRDS.size();
        return BIRDS.get(i % BIRDS.size()) + " " + PLACES.get((i + round) % PLACES.size());
    }
}
