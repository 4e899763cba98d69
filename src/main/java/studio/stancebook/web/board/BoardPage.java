package studio.stancebook.web.board;

import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;

/** The board, which shows what needs somebody. */
@Controller
class BoardPage {

    @GetMapping("/")
    String show() {
        return "board/board";
    }
}
